import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ASK_MS,
  FIRST_WORD_MS,
  HIDDEN_ASK_MS,
  SILENCE_MS,
  UNANSWERED_MS,
  startLink,
  stepLink,
  wakeAt,
  type Link,
  type LinkEffect,
  type LinkEvent,
} from '../../../client/live/live-link.ts';

/** Plays a link against a world that answers; resolves to what was done and when. */
function play(until: number, world: World, isVisible = true) {
  let link = startLink(isVisible, 0);
  const done: [number, LinkEffect][] = [];
  const coming: [number, LinkEvent][] = [...(world.events ?? [])];
  let now = 0;
  const happen = (event: LinkEvent) => {
    const next = stepLink(link, event, now);
    link = next.link;
    for (const effect of next.effects) {
      done.push([now, effect]);
      coming.push(...(world[effect]?.(now) ?? []));
    }
    coming.sort(([a], [b]) => a - b);
  };
  happen('tick');
  for (;;) {
    const wake = wakeAt(link);
    const [at, event] = coming[0] && coming[0][0] <= wake ? coming[0] : [wake, 'tick' as const];
    if (at > until) return { link, done, times: (of: LinkEffect) => times(done, of) };
    if (coming[0]?.[0] === at && coming[0][1] === event) coming.shift();
    now = Math.max(now, at);
    happen(event);
  }
}
type World = { events?: [number, LinkEvent][] } & Partial<
  Record<LinkEffect, (now: number) => [number, LinkEvent][]>
>;
const times = (done: [number, LinkEffect][], of: LinkEffect) =>
  done.filter(([, effect]) => effect === of).map(([at]) => at);
const gaps = (all: number[]) => all.slice(1).map((at, i) => at - (all[i] ?? 0));

const answers = (now: number): [number, LinkEvent][] => [[now + 20, 'answered']];
const beats = (now: number): [number, LinkEvent][] =>
  Array.from({ length: 20 }, (_, i) => [now + 30 + i * 5000, 'heard']);

describe('a link', () => {
  test('asks once at the start and then only listens, while the stream speaks', () => {
    const { done } = play(60_000, { ask: answers, open: beats });
    expect(done).toEqual([
      [0, 'open'],
      [0, 'ask'],
    ]);
  });

  test('asks every second and a half where the stream opens and nothing ever arrives', () => {
    const { times, link } = play(60_000, { ask: answers });
    expect(Math.max(...gaps(times('ask')))).toBeLessThanOrEqual(ASK_MS + 20);
    // A stream that never speaks holds one of the few connections: it is closed, and tried less and less.
    expect(times('close')[0]).toBe(FIRST_WORD_MS);
    expect(times('open').length).toBeLessThan(8);
    expect(link.failures).toBeGreaterThan(3);
  });

  test('asks every second and a half where a proxy answers 502 to the stream', () => {
    const { times } = play(30_000, { ask: answers, open: (now) => [[now + 10, 'broken']] });
    expect(Math.max(...gaps(times('ask')))).toBeLessThanOrEqual(ASK_MS + 20);
    expect(gaps(times('open'))).toEqual([1010, 2010, 4010, 8010]);
  });

  test('asks at once when a stream that spoke is cut, and opens it again soon, however often', () => {
    const cut = (now: number): [number, LinkEvent][] => [
      [now + 30, 'heard'],
      [now + 3000, 'broken'],
    ];
    const { times } = play(40_000, { ask: answers, open: cut });
    expect(new Set(gaps(times('open')))).toEqual(new Set([4000]));
    // Cut at 3000, 7000 …: each time it asks in that moment, and is back within a second.
    expect(times('ask').slice(1, 4)).toEqual([3000, 7000, 11_000]);
  });

  test('notices a stream that has gone silent after it spoke', () => {
    const { times } = play(20_000, { ask: answers, open: (now) => [[now + 30, 'heard']] });
    expect(times('close')[0]).toBe(30 + SILENCE_MS);
    expect(times('ask')[1]).toBe(30 + SILENCE_MS);
  });

  test('goes on asking beside streams that fall silent after their first words, until one has lasted', () => {
    const greeting = (now: number): [number, LinkEvent][] => [
      [now + 20, 'heard'],
      [now + 30, 'heard'],
    ];
    const open = (now: number) => (now < 60_000 ? greeting(now) : beats(now));
    const { times } = play(160_000, { ask: answers, open });
    const asks = times('ask').filter((at) => at > 20 + SILENCE_MS + 10 && at < 60_000);
    expect(Math.max(...gaps(asks))).toBeLessThanOrEqual(ASK_MS + 20);
    expect(times('ask').filter((at) => at > 140_000)).toEqual([]);
  });

  test('returns to the stream when it works again, and stops asking', () => {
    const open = (now: number): [number, LinkEvent][] => (now < 10_000 ? [[now + 10, 'broken']] : beats(now));
    const { times, link } = play(80_000, { ask: answers, open });
    expect(link.stream).toBe('speaking');
    expect(times('ask').filter((at) => at > 16_000)).toEqual([]);
  });

  test('holds no stream while it is hidden, asks seldom, and at once when it is seen again', () => {
    const { done, times } = play(200_000, {
      ask: answers,
      open: beats,
      events: [
        [10_000, 'hidden'],
        [150_000, 'shown'],
      ],
    });
    expect(times('close')).toEqual([10_000]);
    const between = done.filter(([at]) => at > 10_000 && at < 150_000);
    expect(between).toEqual([
      [10_000 + HIDDEN_ASK_MS, 'ask'],
      [10_020 + 2 * HIDDEN_ASK_MS, 'ask'],
    ]);
    expect(done.filter(([at]) => at === 150_000)).toEqual([
      [150_000, 'open'],
      [150_000, 'ask'],
    ]);
  });

  test('asks as soon as it wakes after the machine slept, though nobody said that it was hidden', () => {
    let link = stepLink(startLink(true, 0), 'tick', 0).link;
    link = stepLink(link, 'answered', 20).link;
    link = stepLink(link, 'heard', 30).link;
    expect(stepLink(link, 'tick', 3_600_000).effects).toEqual(['close', 'ask']);
  });

  test('asks at once when the network is back, and less often while nobody answers', () => {
    const none = (now: number): [number, LinkEvent][] => [[now + 5, 'unanswered']];
    const { times } = play(60_000, {
      ask: (now) => (now < 47_000 ? none(now) : answers(now)),
      open: (now) => (now < 47_000 ? [[now + 5, 'broken']] : beats(now)),
      events: [[47_000, 'online']],
    });
    expect(Math.min(...gaps(times('ask').filter((at) => at < 47_000)))).toBeGreaterThan(ASK_MS);
    expect(gaps(times('ask').filter((at) => at < 47_000)).at(-1)).toBe(UNANSWERED_MS + 5);
    expect(times('ask').at(-1)).toBe(47_000);
    expect(times('open').at(-1)).toBe(47_000);
  });

  test('that is behind asks at once, also while an older question is open', () => {
    let link: Link = { ...startLink(true, 0), stream: 'speaking', askAt: Infinity, isAsking: true };
    link = stepLink(link, 'behind', 100).link;
    expect(stepLink(link, 'answered', 200).effects).toEqual(['ask']);
  });

  test('whatever happens: one question at a time, one stream at a time, and never longer unasked than it may be', () => {
    const events = fc.constantFrom<LinkEvent>(
      ...([
        'tick',
        'shown',
        'hidden',
        'online',
        'heard',
        'broken',
        'behind',
        'answered',
        'unanswered',
      ] as const),
    );
    fc.assert(
      fc.property(
        fc.array(fc.tuple(events, fc.integer({ min: 0, max: 9000 })), { maxLength: 60 }),
        (story) => {
          let now = 0;
          let link = startLink(true, now);
          for (const [event, wait] of story) {
            now += wait;
            const was = link;
            // Only what the world can say at this moment.
            if ((event === 'heard' || event === 'broken') && was.stream === 'none') continue;
            if ((event === 'answered' || event === 'unanswered') && !was.isAsking) continue;
            const { link: next, effects } = stepLink(was, event, now);
            link = next;
            if (effects.includes('ask'))
              expect(was.isAsking && event !== 'answered' && event !== 'unanswered').toBe(false);
            if (effects.includes('open'))
              expect(was.stream === 'none' || effects.includes('close') || event === 'broken').toBe(true);
            if (!link.isVisible) expect(link.stream).toBe('none');
            if (link.isVisible && link.stream !== 'speaking' && !link.isAsking)
              expect(wakeAt(link)).toBeLessThanOrEqual(now + UNANSWERED_MS);
            expect(wakeAt(link)).toBeGreaterThan(now);
          }
        },
      ),
    );
  });
});
