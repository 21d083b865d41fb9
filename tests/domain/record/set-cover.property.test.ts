import fc from 'fast-check';
import { expect, test } from 'vitest';
import { greedyCover } from '#domain/record/set-cover';

const SIZE = 9;
const families = fc.array(fc.uniqueArray(fc.nat(SIZE - 1), { maxLength: 6 }), { maxLength: 9 });
const unionOf = (sets: readonly (readonly number[])[]) => new Set(sets.flat());
const harmonic = (n: number) => Array.from({ length: n }, (_, i) => 1 / (i + 1)).reduce((a, b) => a + b, 0);

/** Exhaustive: the fewest of all 2ⁿ choices that hold what can be held. */
function fewest(sets: readonly (readonly number[])[]): number {
  const all = unionOf(sets).size;
  let least = Infinity;
  for (let choice = 0; choice < 2 ** sets.length; choice++) {
    const chosen = sets.filter((_, i) => (choice >> i) & 1);
    if (chosen.length < least && unionOf(chosen).size === all) least = chosen.length;
  }
  return least;
}

// Chvátal, "A greedy heuristic for the set-covering problem", Mathematics of Operations Research 4 (1979):
// cost ≤ H(d) × optimum, d the size of the largest set.
test('holds everything, never worse than H(d) times the fewest, mostly the fewest, and nothing needless', () => {
  let [asked, equal] = [0, 0];
  fc.assert(
    fc.property(families, (sets) => {
      const chosen = greedyCover(sets, SIZE);
      const own = chosen.map((number) => sets[number] ?? []);
      expect(unionOf(own)).toEqual(unionOf(sets));
      const least = fewest(sets);
      const largest = Math.max(0, ...sets.map((set) => set.length));
      expect(chosen.length).toBeLessThanOrEqual(harmonic(largest) * least + 1e-9);
      for (const left of chosen.keys())
        expect(unionOf(own.filter((_, i) => i !== left)).size).toBeLessThan(unionOf(own).size);
      asked++;
      if (chosen.length === least) equal++;
    }),
    { numRuns: 1000 },
  );
  expect(equal / asked).toBeGreaterThan(0.9);
});

// The textbook case that misleads a greedy choice: two rows of seven, and columns of 8, 4 and 2 across both.
test('stays within the bound where it is misled', () => {
  const rows = [
    [0, 2, 4, 6, 8, 10, 12],
    [1, 3, 5, 7, 9, 11, 13],
  ];
  const columns = [
    [0, 1, 2, 3, 4, 5, 6, 7],
    [8, 9, 10, 11],
    [12, 13],
  ];
  expect(greedyCover([...rows, ...columns], 14)).toEqual([2, 3, 4]);
});

test('takes the first of equals, leaves out what brings nothing, and counts an element once', () => {
  expect(greedyCover([[], [0, 1], [1, 0]], 2)).toEqual([1]);
  expect(
    greedyCover(
      [
        [0, 0, 0],
        [0, 1],
      ],
      2,
    ),
  ).toEqual([1]);
  expect(greedyCover([], 3)).toEqual([]);
  // The largest is chosen first and made needless by the three that must follow it.
  expect(
    greedyCover(
      [
        [0, 1, 2, 3, 4, 5],
        [0, 1, 6],
        [2, 3, 7],
        [4, 5, 8],
      ],
      9,
    ),
  ).toEqual([1, 2, 3]);
});
