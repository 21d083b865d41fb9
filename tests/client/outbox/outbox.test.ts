import { beforeEach, describe, expect, test } from 'vitest';
import { PROBLEMS, type ProblemCode } from '#domain/contract/problems';
import { OfflineError, ProblemError } from '../../../client/api/errors.ts';
import { createOutbox, type Outbox, type TagWrite, type Unsent } from '../../../client/outbox/outbox.ts';
import type { KeyValueStorage } from '../../../client/outbox/browser-storage.ts';
import { memoryStorage } from '../memory-storage.ts';

const facts = {
  mark: 'い三',
  stage: 'pegged',
  region: { shape: 'rectangle', x: 0, y: 0, w: 0.1, h: 0.1 },
} as const;
const place = (tag: string): TagWrite => ({ is: 'place', tag, facts });
const problem = (code: ProblemCode) =>
  new ProblemError({ type: '', title: '', status: PROBLEMS[code], detail: '', code, params: {} });

let storage: KeyValueStorage;
let sent: string[];
/** What the network does with each send, in turn; when empty it works. */
let weather: (Error | null)[];

async function send(unsent: Unsent): Promise<void> {
  const error = weather.shift();
  if (error) throw error;
  sent.push(`${unsent.write.is} ${unsent.write.tag}`);
}
/** Whose cookie the browser holds. */
let here: string[];
const isStillHere = (account: string) => here.includes(account);
const open = (house = 'h1'): Outbox => createOutbox({ house, storage, send, now: () => 1000, isStillHere });
const say = (outbox: Outbox, write: TagWrite, by = 'ann') => outbox.add({ photo: 'p1', by, write });
const waiting = (outbox: Outbox) => outbox.entries().map(({ write }) => write.tag);

beforeEach(() => {
  storage = memoryStorage();
  sent = [];
  weather = [];
  here = ['ann', 'ben'];
});

describe('the outbox', () => {
  test('sends in the order of saying and is empty afterwards', async () => {
    const outbox = open();
    say(outbox, place('a'));
    say(outbox, { is: 'supersede', tag: 'b', old: 'a', facts });
    say(outbox, { is: 'withdraw', tag: 'b', reason: '', facts });
    await outbox.flush('ann');
    expect(sent).toEqual(['place a', 'supersede b', 'withdraw b']);
    expect(outbox.entries()).toEqual([]);
    expect(storage.length).toBe(0);
  });

  test('without network keeps everything, also over a reload, and sends it later with the same id', async () => {
    weather = [new OfflineError('gone')];
    const before = open();
    say(before, place('a'));
    say(before, place('b'));
    await before.flush('ann');
    expect(sent).toEqual([]);
    const after = open();
    expect(waiting(after)).toEqual(['a', 'b']);
    await after.flush('ann');
    expect(sent).toEqual(['place a', 'place b']);
  });

  test.each<ProblemCode>(['not-signed-in', 'too-many-attempts', 'internal-error', 'storage-full'])(
    '%s is a reason to wait, not to give up',
    async (code) => {
      weather = [problem(code)];
      const outbox = open();
      say(outbox, place('a'));
      await outbox.flush('ann');
      expect(outbox.entries()).toMatchObject([{ refused: null }]);
      await outbox.flush('ann');
      expect(sent).toEqual(['place a']);
    },
  );

  test('what the server will never take is marked, does not hold up the rest, and can be dropped', async () => {
    weather = [problem('stage-outside-track')];
    const outbox = open();
    say(outbox, place('a'));
    say(outbox, place('b'));
    await outbox.flush('ann');
    expect(sent).toEqual(['place b']);
    expect(outbox.entries()).toMatchObject([
      { write: { tag: 'a' }, refused: { code: 'stage-outside-track' } },
    ]);
    await outbox.flush('ann');
    expect(sent).toEqual(['place b']);
    outbox.drop('place.a');
    expect(open().entries()).toEqual([]);
  });

  test('two calls at the same time send each entry once', async () => {
    const outbox = open();
    say(outbox, place('a'));
    await Promise.all([outbox.flush('ann'), outbox.flush('ann')]);
    expect(sent).toEqual(['place a']);
  });

  test('what is said while it sends goes out too', async () => {
    const outbox = open();
    say(outbox, place('a'));
    const flushing = outbox.flush('ann');
    say(outbox, place('b'));
    await flushing;
    expect(sent).toEqual(['place a', 'place b']);
  });

  test('nobody sends in the name of another', async () => {
    const outbox = open();
    say(outbox, place('a'), 'ann');
    await outbox.flush('ben');
    expect(sent).toEqual([]);
    expect(waiting(outbox)).toEqual(['a']);
  });

  test.each([
    [new OfflineError('gone'), 'offline'],
    [problem('not-signed-in'), 'signed-out'],
    [problem('internal-error'), 'server'],
  ])('says why it waits, until something was heard: %s', async (error, pause) => {
    weather = [error];
    const outbox = open();
    say(outbox, place('a'));
    expect(outbox.pause()).toBeNull();
    await outbox.flush('ann');
    expect(outbox.pause()).toBe(pause);
    await outbox.flush('ann');
    expect(outbox.pause()).toBeNull();
  });

  test('sends nothing with the cookie of somebody who has signed in in another window', async () => {
    const outbox = open();
    say(outbox, place('a'));
    say(outbox, place('b'));
    here = ['ben'];
    await outbox.flush('ann');
    expect([sent, waiting(outbox), outbox.pause()]).toEqual([[], ['a', 'b'], 'signed-out']);
    here = ['ann'];
    await outbox.flush('ann');
    expect(sent).toEqual(['place a', 'place b']);
  });

  test('houses do not see each other', () => {
    say(open('h1'), place('a'));
    expect(open('h2').entries()).toEqual([]);
    expect(waiting(open('h1'))).toEqual(['a']);
  });

  test('two windows lose nothing of each other', () => {
    const [one, two] = [open(), open()];
    say(one, place('a'));
    say(two, place('b'));
    one.reload();
    expect(waiting(one).sort()).toEqual(['a', 'b']);
  });

  test('tells whoever listens, until they stop', () => {
    const outbox = open();
    let heard = 0;
    const stop = outbox.subscribe(() => (heard += 1));
    say(outbox, place('a'));
    expect(heard).toBe(1);
    stop();
    say(outbox, place('b'));
    expect(heard).toBe(1);
  });

  test('works without storage, and says that nothing is kept', async () => {
    const outbox = createOutbox({ house: 'h1', storage: null, send, now: () => 1, isStillHere });
    expect(outbox.isKept()).toBe(true);
    say(outbox, place('a'));
    expect(outbox.isKept()).toBe(false);
    await outbox.flush('ann');
    expect(sent).toEqual(['place a']);
  });

  test('rubbish in the storage is passed over', () => {
    storage.setItem('arakabe.unsent.h1.x', '{"key":');
    storage.setItem('arakabe.unsent.h1.y', '{"key":"y"}');
    expect(open().entries()).toEqual([]);
  });
});
