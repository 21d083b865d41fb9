import { localOf, pointOf, type LatLon } from './geodesic.ts';

/**
 * The middle of positions: median eastwards and northwards, so that a few from elsewhere move it little, and
 * none falls apart at the antimeridian. null without any.
 */
export function middlePosition(positions: readonly LatLon[]): LatLon | null {
  const [first] = positions;
  if (!first) return null;
  const locals = positions.map((position) => localOf(first, position));
  return pointOf(first, {
    eastM: median(locals.map(({ eastM }) => eastM)),
    northM: median(locals.map(({ northM }) => northM)),
  });
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(half)] ?? 0) + (sorted[Math.ceil(half)] ?? 0)) / 2;
}
