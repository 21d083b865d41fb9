import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { addedSince, allShots, isTaken, missingIn } from '../../../client/screens/shots/taken-since.ts';
import { shot, walkOf } from './some-walk.ts';

const rail = shot('rail', [[0, 1820]]);
const now = (...shots: (typeof rail)[]) => missingIn(walkOf(shots));

describe('a shot', () => {
  it('is open while any of it is missing, wherever that is listed now', () => {
    expect(isTaken(rail, now(rail))).toBe(false);
    expect(isTaken(rail, now(shot('rail', [[1000, 3640]])))).toBe(false);
    expect(isTaken(rail, missingIn(walkOf([], { unseen: [{ ...rail, reason: 'blocked' }] })))).toBe(false);
    expect(isTaken(rail, missingIn(walkOf([], { placeless: [{ ...rail, stretches: [] }] })))).toBe(false);
  });
  it('is taken once nothing of it is missing, whatever else is', () => {
    expect(isTaken(rail, now())).toBe(true);
    expect(isTaken(rail, now(shot('rail', [[1820, 3640]])))).toBe(true);
    expect(isTaken(rail, now({ ...rail, covering: 'floor' }))).toBe(true);
    expect(isTaken(rail, now({ ...rail, mark: 'post' as typeof rail.mark }))).toBe(true);
  });
  it('without a place in space is one piece', () => {
    const lath = shot('lath', []);
    expect(isTaken(lath, now(lath))).toBe(false);
    expect(isTaken(lath, now(shot('lath', [[0, 100]])))).toBe(true);
    expect(isTaken(lath, now(rail))).toBe(true);
  });
});

describe('what the walk lacks', () => {
  const added = (walk: (typeof rail)[], later: (typeof rail)[]) => addedSince(walkOf(walk), walkOf(later));
  it('is nothing where the same or less is missing', () => {
    expect(added([rail], [rail])).toBe(0);
    expect(added([rail], [])).toBe(0);
    expect(added([shot('rail', [[0, 3640]])], [shot('rail', [[0, 910]]), shot('rail', [[1820, 3640]])])).toBe(
      0,
    );
  });
  it('is each shot that shows more', () => {
    expect(added([rail], [shot('rail', [[0, 2000]]), shot('post', [[0, 2800]]), shot('lath', [])])).toBe(3);
  });
});

/** Parts of one rail in whole decimetres; the oracle goes through them one by one. */
const parts = fc
  .subarray([0, 1, 2, 3, 4, 5, 6, 7])
  .map((all) => all.map((n): [number, number] => [n * 100, n * 100 + 100]));

test('all that was missing is taken or still open, part by part', () => {
  fc.assert(
    fc.property(parts, parts, (before, after) => {
      const walk = walkOf(before.map((part) => shot('rail', [part])));
      const missing = missingIn(walkOf(after.map((part) => shot('rail', [part]))));
      const open = allShots(walk).filter((one) => !isTaken(one, missing));
      expect(open.map(({ stretches: [part] }) => part?.from)).toEqual(
        before.map(([from]) => from).filter((from) => after.some(([still]) => still === from)),
      );
      const news = after.filter(([from]) => !before.some(([known]) => known === from)).length;
      expect(addedSince(walk, walkOf(after.map((part) => shot('rail', [part]))))).toBe(news);
    }),
  );
});
