import type { LatLon, LocalM } from '#domain/place/geodesic';

export interface PlanMark {
  readonly id: string;
  readonly kind: 'photo' | 'device';
  readonly at: LatLon;
  readonly errorM: number;
  /** Which way it looked and how wide; the opening is null where it is not known. */
  readonly view: { readonly degrees: number; readonly opening: number | null } | null;
}

/** Half the width of the plan's own square: north up, the middle at 0, 0, y downwards. */
export const HALF = 100;
/** How many times the site's radius the plan reaches at most; what is farther stands at its edge. */
const REACH = 4;
const LEAST_M = 20;

/** Metres from the middle to the plan's edge: the site with some air, and what lies near it. */
export function planReach(radiusM: number | null, distances: readonly number[]): number {
  const most = radiusM === null ? Infinity : radiusM * REACH;
  // One photo from another town must not make the site a dot.
  const near = distances.map((distance) => distance * 1.2).filter((distance) => distance <= most);
  return Math.max(radiusM === null ? LEAST_M : radiusM * 1.2, ...near);
}

export interface PlanPoint {
  readonly x: number;
  readonly y: number;
  /** Beyond the plan: drawn at its edge, in its direction. */
  readonly isBeyond: boolean;
}

export function planPoint({ eastM, northM }: LocalM, reachM: number): PlanPoint {
  const [x, y] = [(eastM / reachM) * HALF, (-northM / reachM) * HALF];
  const far = Math.max(Math.abs(x), Math.abs(y)) / (HALF - 5);
  return far <= 1 ? { x, y, isBeyond: false } : { x: x / far, y: y / far, isBeyond: true };
}

/** The longest of 1, 2, 5 × 10ⁿ metres that takes up at most a third of the plan's width. */
export function scaleBar(reachM: number): { metres: number; part: number } {
  const most = (2 * reachM) / 3;
  const power = 10 ** Math.floor(Math.log10(most));
  const metres = ([5, 2, 1].find((step) => step * power <= most) ?? 1) * power;
  return { metres, part: metres / (2 * reachM) };
}
