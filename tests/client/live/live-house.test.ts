import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Answer } from '#domain/contract/routes';
import type { HouseEvent, StatementEvent } from '#domain/contract/house-events';
import { startLiveHouse, type Change } from '../../../client/live/live-house.ts';
import { ASK_MS } from '../../../client/live/live-link.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const said = (seq: number): StatementEvent => ({ type: 'statement', seq, kind: 'tag.placed', photo: 'p' });

/** A house whose ledger grows, and a stream that passes on what it is told to. */
function world(size = 3) {
  const house = { size, made: 0 };
  const streams: ((event: HouseEvent) => void)[] = [];
  const asked: (number | undefined)[] = [];
  const told: (readonly Change[] | null)[] = [];
  const known: Parameters<typeof startLiveHouse>[0]['known'] = { state: null };
  const start = () =>
    startLiveHouse({
      openStream: (heard) => {
        streams.push(heard);
        return () => {};
      },
      ask: (after): Promise<Answer<'houseChanges'>> => {
        asked.push(after);
        const statements =
          after === undefined ? null : Array.from({ length: house.size - after }, (_, i) => said(after + i));
        return Promise.resolve({ ...house, statements });
      },
      changed: (changes) => told.push(changes),
      known,
      now: Date.now,
      isVisible: true,
    });
  const hear = (event: HouseEvent) => streams.at(-1)?.(event);
  const here = () => hear({ type: 'here', ...house });
  const seqs = () =>
    told.map((changes) => changes?.map((c) => (c.type === 'statement' ? c.seq : c.type)) ?? 'all');
  return { house, known, asked, start, hear, here, seqs };
}

test('what is heard is told once; a beat that says nothing new asks for nothing', async () => {
  const { house, asked, start, hear, here, seqs } = world();
  start();
  await vi.advanceTimersByTimeAsync(10);
  here();
  house.size = 4;
  hear(said(3));
  here();
  hear(said(3));
  await vi.advanceTimersByTimeAsync(4000);
  expect([asked, seqs()]).toEqual([[undefined], [[3]]]);
});

test('where nothing is heard the same is learned by asking, once', async () => {
  const { house, start, seqs } = world();
  start();
  await vi.advanceTimersByTimeAsync(10);
  house.size = 5;
  await vi.advanceTimersByTimeAsync(ASK_MS);
  expect(seqs()).toEqual([[3, 4]]);
  house.made = 2;
  await vi.advanceTimersByTimeAsync(ASK_MS);
  expect(seqs()).toEqual([
    [3, 4],
    ['pictures', 'legibility'],
  ]);
  await vi.advanceTimersByTimeAsync(5 * ASK_MS);
  expect(seqs()).toHaveLength(2);
});

test('a statement that got lost on the way is noticed at the next, or at the next beat', async () => {
  const { house, start, hear, here, seqs } = world();
  start();
  await vi.advanceTimersByTimeAsync(10);
  here();
  house.size = 5;
  hear(said(4));
  await vi.advanceTimersByTimeAsync(10);
  expect(seqs()).toEqual([[3, 4]]);
  house.size = 6;
  here();
  await vi.advanceTimersByTimeAsync(10);
  expect(seqs()).toEqual([[3, 4], [5]]);
});

test('an answer that was overtaken by the stream tells nothing twice', async () => {
  const { house, start, hear, here, seqs } = world();
  const live = start();
  await vi.advanceTimersByTimeAsync(10);
  here();
  house.size = 4;
  live.tell('online');
  hear(said(3));
  await vi.advanceTimersByTimeAsync(10);
  expect(seqs()).toEqual([[3]]);
});

test('coming back to a house asks for what was said since, not for everything', async () => {
  const { house, asked, start, seqs } = world();
  const first = start();
  await vi.advanceTimersByTimeAsync(10);
  first.stop();
  house.size = 4;
  await vi.advanceTimersByTimeAsync(60_000);
  expect(seqs()).toEqual([]);
  start();
  await vi.advanceTimersByTimeAsync(10);
  expect([asked, seqs()]).toEqual([[undefined, 3], [[3]]]);
});

test('a finished picture is told as it is heard, and not again by the beat', async () => {
  const { house, asked, start, hear, here, seqs } = world();
  start();
  await vi.advanceTimersByTimeAsync(10);
  here();
  house.made = 1;
  hear({ type: 'pictures', photo: 'p', pictures: 'ready', made: 1 });
  here();
  await vi.advanceTimersByTimeAsync(10);
  expect([asked.length, seqs()]).toEqual([1, [['pictures']]]);
});
