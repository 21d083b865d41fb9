import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestFirst, walkLength, walkThrough, type Spot } from '#domain/record/walk';

const coordinate = fc.integer({ min: -20_000, max: 20_000 });
const spot = fc.record({ x: coordinate, y: coordinate });
const spots = (maxLength: number) => fc.array(spot, { maxLength });

test('passes each spot once and is never longer than going to the nearest each time', () => {
  let shorter = 0;
  fc.assert(
    fc.property(spots(25), spot, (all, start) => {
      const [walk, plain] = [walkThrough(all, start), nearestFirst(all, start)];
      const numbers = [...all.keys()];
      expect([walk.toSorted((a, b) => a - b), plain.toSorted((a, b) => a - b)]).toEqual([numbers, numbers]);
      const saved = walkLength(plain, all, start) - walkLength(walk, all, start);
      expect(saved).toBeGreaterThanOrEqual(0);
      if (saved > 1) shorter++;
    }),
    { numRuns: 500 },
  );
  expect(shorter).toBeGreaterThan(50);
});

test('no turning round of any part would shorten it', () => {
  fc.assert(
    fc.property(spots(10), spot, (all, start) => {
      const walk = walkThrough(all, start);
      const length = walkLength(walk, all, start);
      for (let i = 0; i < walk.length; i++)
        for (let j = i + 1; j < walk.length; j++) {
          const turned = [...walk.slice(0, i), ...walk.slice(i, j + 1).reverse(), ...walk.slice(j + 1)];
          expect(walkLength(turned, all, start)).toBeGreaterThan(length - 0.02);
        }
    }),
  );
});

test('is the shortest of all orders for most small walks', () => {
  let [asked, equal] = [0, 0];
  const shortest = (all: readonly Spot[], start: Spot): number =>
    all.length === 0
      ? 0
      : Math.min(
          ...all.map(
            (next, i) => Math.hypot(next.x - start.x, next.y - start.y) + shortest(all.toSpliced(i, 1), next),
          ),
        );
  fc.assert(
    fc.property(spots(6), spot, (all, start) => {
      const [own, best] = [walkLength(walkThrough(all, start), all, start), shortest(all, start)];
      expect(own).toBeGreaterThan(best - 0.1);
      asked++;
      if (own < best + 0.1) equal++;
    }),
    { numRuns: 200 },
  );
  expect(equal / asked).toBeGreaterThan(0.8);
});

test('goes along a row of places, whatever their numbers', () => {
  const row = [3, 1, 4, 0, 2].map((x) => ({ x: x * 1820, y: 0 }));
  expect(walkThrough(row, { x: -1, y: 0 })).toEqual([3, 1, 4, 0, 2]);
  expect(walkThrough([], { x: 0, y: 0 })).toEqual([]);
});
