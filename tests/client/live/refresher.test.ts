import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { REST_MOST_MS, createRefresher } from '../../../client/live/refresher.ts';

const GATHER_MS = 200;

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

function reader(costs: Record<string, number>) {
  const reads: Record<string, number> = {};
  let open = 0;
  let mostOpen = 0;
  const refresher = createRefresher({
    read: async (part) => {
      reads[part] = (reads[part] ?? 0) + 1;
      mostOpen = Math.max(mostOpen, (open += 1));
      await new Promise((done) => setTimeout(done, costs[part]));
      open -= 1;
    },
    restOf: (part) => (part === 'photo' ? 1 : 9),
    gatherOf: () => GATHER_MS,
    now: Date.now,
  });
  return { reads, refresher, mostOpen: () => mostOpen };
}

test('many changes at once are one reading', async () => {
  const { reads, refresher } = reader({ photo: 20 });
  for (let i = 0; i < 50; i++) refresher.soon('photo');
  await vi.advanceTimersByTimeAsync(GATHER_MS + 100);
  expect(reads).toEqual({ photo: 1 });
});

test('a change during the reading is read after it', async () => {
  const { reads, refresher, mostOpen } = reader({ photo: 100 });
  refresher.soon('photo');
  await vi.advanceTimersByTimeAsync(GATHER_MS + 50);
  refresher.soon('photo');
  await vi.advanceTimersByTimeAsync(1000);
  expect([reads, mostOpen()]).toEqual([{ photo: 2 }, 1]);
});

test('what is dear is read a tenth of the time while somebody tags one a second, and the last change is read', async () => {
  const { reads, refresher } = reader({ photo: 30, members: 1000 });
  for (let i = 0; i < 60; i++) {
    refresher.soon('photo');
    refresher.soon('members');
    await vi.advanceTimersByTimeAsync(1000);
  }
  expect(reads['photo']).toBe(60);
  expect(reads['members']).toBeLessThanOrEqual(7);
  const before = reads['members'] ?? 0;
  await vi.advanceTimersByTimeAsync(REST_MOST_MS);
  expect(reads['members']).toBe(before + 1);
});

test('however dear, it is read every half minute', async () => {
  const { reads, refresher } = reader({ members: 20_000 });
  for (let i = 0; i < 200; i++) {
    refresher.soon('members');
    await vi.advanceTimersByTimeAsync(1000);
  }
  expect(reads['members']).toBe(4);
});

test('nothing is read after the house was left', async () => {
  const { reads, refresher } = reader({ photo: 20 });
  refresher.soon('photo');
  refresher.stop();
  refresher.soon('photo');
  await vi.advanceTimersByTimeAsync(10_000);
  expect(reads).toEqual({});
});
