import { directionOf } from '../frame/clip.ts';
import type { Grid } from '../frame/grid.ts';
import type { Axis } from '../frame/set-out.ts';
import type { Stretch } from './stretches.ts';

/** A piece is no shorter than this: between narrow lines nobody takes a picture of its own. */
export const SHORTEST_PIECE_MM = 400;

/** A stretch of a member (mm from its start), cut where its axis crosses a line or a level of the grid. */
export function bayPieces(axis: Axis, stretch: Stretch, grid: Grid): Stretch[] {
  const pieces: Stretch[] = [];
  let from = stretch.from;
  for (const at of crossingsOf(axis, grid)) {
    if (at - from < SHORTEST_PIECE_MM || stretch.to - at < SHORTEST_PIECE_MM) continue;
    pieces.push({ from, to: at });
    from = at;
  }
  return [...pieces, { from, to: stretch.to }];
}

function crossingsOf(axis: Axis, { first, second, levels }: Grid): number[] {
  const [x, y, z] = directionOf(axis);
  const cuts = (heights: readonly number[], start: number, speed: number) =>
    Math.abs(speed) < 1e-6 ? [] : heights.map((at) => (at - start) / speed);
  return [
    ...cuts(
      first.lines.map(({ at }) => at),
      axis.start.x,
      x,
    ),
    ...cuts(
      second.lines.map(({ at }) => at),
      axis.start.y,
      y,
    ),
    ...cuts(
      levels.map(({ height }) => height),
      axis.start.z,
      z,
    ),
  ].sort((a, b) => a - b);
}
