import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coveredTimes,
  lengthOf,
  meets,
  SHORTEST_GAP_MM,
  type Stretch,
  unionOf,
  without,
} from '#domain/record/stretches';

const REACH = 60;
const stretch = fc
  .tuple(fc.nat(REACH - 1), fc.integer({ min: 1, max: 20 }))
  .map(([from, size]): Stretch => ({ from, to: Math.min(REACH, from + size) }));
const stretches = fc.array(stretch, { maxLength: 8 });

/** Brute force: which unit cells between integers lie in any of them. */
const cells = (list: readonly Stretch[]) =>
  Array.from({ length: REACH }, (_, cell) => list.some(({ from, to }) => from <= cell && cell < to));
/** Runs of cells as stretches. */
function runs(taken: readonly boolean[]): Stretch[] {
  return taken.flatMap((is, from) => {
    if (!is || taken[from - 1]) return [];
    const end = taken.indexOf(false, from);
    return [{ from, to: end < 0 ? taken.length : end }];
  });
}

describe('stretches against cells of a millimetre', () => {
  const RUNS = { numRuns: 2000 };

  it('union', () => {
    fc.assert(
      fc.property(stretches, (list) => {
        expect(unionOf(list)).toEqual(runs(cells(list)));
      }),
      RUNS,
    );
  });

  it('what is left, without slivers', () => {
    fc.assert(
      fc.property(stretches, stretches, (whole, taken) => {
        const covers = cells(taken);
        const left = runs(cells(whole).map((is, i) => is && !covers[i]));
        expect(without(whole, taken)).toEqual(left.filter(({ from, to }) => to - from >= SHORTEST_GAP_MM));
      }),
      RUNS,
    );
  });

  it('at least so many times', () => {
    const sets = fc.array(stretches, { maxLength: 5 });
    fc.assert(
      fc.property(sets, fc.integer({ min: 1, max: 4 }), (all, times) => {
        const each = all.map(cells);
        const deep = cells([]).map((_, i) => each.filter((set) => set[i]).length >= times);
        expect(coveredTimes(all, times)).toEqual(runs(deep));
      }),
      RUNS,
    );
  });

  it('length, and what has something in common', () => {
    fc.assert(
      fc.property(stretches, stretch, (list, one) => {
        expect(lengthOf(list)).toBe(cells(list).filter(Boolean).length);
        const own = cells([one]);
        const common = list.map((other) => cells([other]).filter((is, i) => is && own[i]).length);
        expect(meets(one, list)).toBe(common.some((size) => size >= SHORTEST_GAP_MM));
      }),
      RUNS,
    );
  });
});

describe('stretches at their edges', () => {
  it('touch and are one', () =>
    expect(
      unionOf([
        { from: 5, to: 9 },
        { from: 0, to: 5 },
      ]),
    ).toEqual([{ from: 0, to: 9 }]));
  it('leave nothing thinner than a gap', () => {
    const whole = [{ from: 0, to: 100 }];
    expect(without(whole, [{ from: 4.9, to: 95 }])).toEqual([{ from: 95, to: 100 }]);
    expect(without(whole, [{ from: 5, to: 95.1 }])).toEqual([{ from: 0, to: 5 }]);
    expect(without([{ from: 0, to: 4 }], [])).toEqual([]);
  });
  it('count a set once, however it overlaps itself', () =>
    expect(
      coveredTimes(
        [
          [
            { from: 0, to: 9 },
            { from: 2, to: 5 },
          ],
          [{ from: 4, to: 20 }],
        ],
        2,
      ),
    ).toEqual([{ from: 4, to: 9 }]));
});
