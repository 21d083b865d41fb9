import { Matrix } from 'ml-matrix';
import { apart, type Line } from './apart.ts';
import type { DrawnAxis } from './drawn-axis.ts';
import { factored, logDeterminant, normal, slopeAt, squares } from './least-squares.ts';
import { pinhole, type Stance } from './pinhole.ts';
import { offOf, stancesOf, type Sighted } from './stances.ts';

/** How unlike what is drawn is what would be seen of a member there; the smaller the likelier. */
export type Unlikeness = (drawn: DrawnAxis, line: Line) => number;

/** How many likely stances are kept beside each other, and how much worse than the best they may be. */
const STANCES = 3;
const OUT_OF_QUESTION = 25;

/**
 * Tells of one picture which members a region may show, by those that are known in it: they say where the camera stood,
 * as well as they can, and so where in the picture every other member is. Null where nothing is known.
 */
export function unlikenessIn(sighted: Sighted): Unlikeness | null {
  const { known, tallness, hand } = sighted;
  if (known.length === 0) return null;
  const middle = middleOf(sighted);
  const off = offOf(sighted, middle);
  const found = stancesOf(sighted, off, middle);
  const least = found[0]?.sum ?? 0;
  const likely = found.filter(({ sum }) => sum <= least + OUT_OF_QUESTION).slice(0, STANCES);
  const stances = likely.flatMap(({ at, sum }) => {
    const { matrix } = normal(slopeAt(off, at));
    const factors = factored(matrix);
    return factors ? [{ at, sum, matrix, logDet: logDeterminant(factors) }] : [];
  });
  return (drawn, line) =>
    stances.reduce((best, { at, sum, matrix, logDet }) => {
      const here = (stance: readonly number[]) =>
        apart(drawn, line, pinhole(stance as unknown as Stance, hand), tallness);
      // Were it this one, the camera would have stood a little elsewhere: one step of Gauss and Newton.
      const slope = slopeAt(here, at);
      const own = normal(slope);
      const factors = factored(Matrix.add(matrix, own.matrix));
      if (!factors) return best;
      const saved = factors.solve(own.right).dot(own.right);
      const spread = logDeterminant(factors) - logDet;
      return Math.min(best, sum + squares(slope.off) - saved + spread);
    }, Infinity);
}

function middleOf({ known }: Sighted): [number, number] {
  const mean = (of: 'x' | 'y') =>
    known.reduce((sum, { line }) => sum + line.start[of] + line.end[of], 0) / (2000 * known.length);
  return [mean('x'), mean('y')];
}
