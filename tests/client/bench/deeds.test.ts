import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TagFactsInput, TagWrite } from '../../../client/outbox/outbox.ts';
import {
  NO_DEEDS,
  sayAgain,
  takeBack,
  withDeed,
  type Deed,
  type Deeds,
} from '../../../client/screens/bench/deeds.ts';

const facts = (mark: string) => ({ mark, stage: 'pegged', region: {} }) as unknown as TagFactsInput;

/** A record as the server keeps it: every tag for ever, with how it stands. */
function record() {
  const tags = new Map<string, { mark: string; state: 'standing' | 'superseded' | 'withdrawn' }>();
  const end = (tag: string, state: 'superseded' | 'withdrawn') => {
    const found = tags.get(tag);
    if (found?.state !== 'standing') throw new Error(`${tag} does not stand.`);
    tags.set(tag, { ...found, state });
  };
  const hear = (write: TagWrite) => {
    if (write.is === 'withdraw') end(write.tag, 'withdrawn');
    if (write.is === 'supersede') end(write.old, 'superseded');
    if (write.is !== 'withdraw') tags.set(write.tag, { mark: write.facts.mark, state: 'standing' });
  };
  const standing = () => [...tags].filter(([, { state }]) => state === 'standing');
  return {
    hear,
    standing: (tag: string) => tags.get(tag)?.state,
    tagAt: (n: number) => standing()[n % Math.max(1, standing().length)],
    marks: () =>
      standing()
        .map(([, { mark }]) => mark)
        .sort(),
    end,
  };
}

/** One person at one photo: says things, takes them back, says them again. */
function speaker() {
  const at = record();
  let made = 0;
  const newId = () => `t${(made += 1)}`;
  let deeds: Deeds = NO_DEEDS;
  const say = (write: TagWrite, deed: Deed) => {
    at.hear(write);
    deeds = withDeed(deeds, deed);
  };
  const turn = (how: typeof takeBack) => {
    const turned = how(deeds, at.standing, newId, 'a slip');
    if (!turned) return false;
    at.hear(turned.write);
    deeds = turned.deeds;
    return true;
  };
  return {
    at,
    place(mark: string) {
      const tag = newId();
      say({ is: 'place', tag, facts: facts(mark) }, { is: 'place', tag, facts: facts(mark) });
    },
    change(n: number, mark: string) {
      const [old, before] = at.tagAt(n) ?? [];
      if (old === undefined || !before) return;
      const tag = newId();
      const said = { is: 'supersede', tag, old, facts: facts(mark) } as const;
      say(said, { ...said, before: facts(before.mark) });
    },
    withdraw(n: number) {
      const [tag, was] = at.tagAt(n) ?? [];
      if (tag === undefined || !was) return;
      say(
        { is: 'withdraw', tag, reason: '', facts: facts(was.mark) },
        { is: 'withdraw', tag, facts: facts(was.mark) },
      );
    },
    undo: () => turn(takeBack),
    redo: () => turn(sayAgain),
  };
}

type Act = (who: ReturnType<typeof speaker>) => void;
const act: fc.Arbitrary<Act> = fc.oneof(
  fc.constantFrom('a', 'b', 'c').map(
    (mark): Act =>
      (who) =>
        who.place(mark),
  ),
  fc.tuple(fc.nat(5), fc.constantFrom('x', 'y')).map(
    ([n, mark]): Act =>
      (who) =>
        who.change(n, mark),
  ),
  fc.nat(5).map(
    (n): Act =>
      (who) =>
        who.withdraw(n),
  ),
);

describe('taking back what was said', () => {
  it('goes back through every state of the photo and forth again, by statements alone', () => {
    fc.assert(
      fc.property(fc.array(act, { maxLength: 12 }), (acts) => {
        const who = speaker();
        const states = [who.at.marks()];
        for (const step of acts) {
          step(who);
          const now = who.at.marks();
          if (JSON.stringify(now) !== JSON.stringify(states.at(-1))) states.push(now);
        }
        // A change to the same mark is a deed that shows no difference: only differences are compared.
        const walk = (turn: () => boolean) => {
          const seen = [who.at.marks()];
          while (turn()) {
            const now = who.at.marks();
            if (JSON.stringify(now) !== JSON.stringify(seen.at(-1))) seen.push(now);
          }
          return seen;
        };
        expect(walk(who.undo)).toEqual(states.toReversed());
        expect(walk(who.redo)).toEqual(states);
        expect(walk(who.undo)).toEqual(states.toReversed());
      }),
    );
  });

  it('leaves alone what somebody else has ended meanwhile', () => {
    const who = speaker();
    who.place('a');
    who.place('b');
    const [tag = ''] = who.at.tagAt(1) ?? [];
    who.at.end(tag, 'withdrawn');
    expect(who.undo()).toBe(true);
    expect(who.at.marks()).toEqual([]);
    expect(who.undo()).toBe(false);
  });

  it('cannot say again what a new statement has overtaken', () => {
    const who = speaker();
    who.place('a');
    who.undo();
    who.place('b');
    expect(who.redo()).toBe(false);
    expect(who.at.marks()).toEqual(['b']);
  });
});
