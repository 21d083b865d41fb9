import type { Grid } from '../grid.ts';
import type { Point } from '../set-out.ts';
import type { FamilyName } from '../grid.ts';
import type { Flat } from './flat.ts';

export const OTHER_FAMILY = { first: 'second', second: 'first' } as const satisfies Record<
  FamilyName,
  FamilyName
>;

/** Where a point lies among the lines of a family: the first stand at x, the second at y. */
export const among = (family: FamilyName, { x, y }: Pick<Point, 'x' | 'y'>) => (family === 'first' ? x : y);

/** How the lines of a family run to the right of a drawing; see `elevationView`. */
export function rightward(grid: Grid, family: FamilyName): 1 | -1 {
  if (family === 'first') return grid.first.runs === 'rightward' ? 1 : -1;
  return grid.second.runs === 'upward' ? 1 : -1;
}

/**
 * The elevation on a line: seen from below the plan for the second lines, from its right for the first, so
 * that where the crew counts leftward and downward both elevations count leftward too. Common practice.
 */
export function elevationView(grid: Grid, family: FamilyName): (point: Point) => Flat {
  const along = OTHER_FAMILY[family];
  const sign = rightward(grid, along);
  return (point) => ({ u: sign * among(along, point), v: 0 - point.z });
}

/** On which side of a line the eye of its elevation is: the right of the plan for the first lines, else below it. */
export function seenSide(grid: Grid, family: FamilyName): 'lower' | 'higher' {
  const isHigher = family === 'first' ? grid.first.runs === 'rightward' : grid.second.runs === 'downward';
  return isHigher ? 'higher' : 'lower';
}

/** The plan, turned as the crew turns it. */
export function planView(grid: Grid): (point: Pick<Point, 'x' | 'y'>) => Flat {
  const [right, down] = [rightward(grid, 'first'), grid.second.runs === 'downward' ? 1 : -1];
  return ({ x, y }) => ({ u: right * x, v: down * y });
}
