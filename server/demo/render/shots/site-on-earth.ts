import type { Vec } from '../vec.ts';

/**
 * Where the crossing い一 lies, in degrees: open water in the north of Lake Biwa, far from any address (position from
 * memory). `bearing` is that of the second lines' direction (y), from true north.
 */
export const SITE = { lat: 35.3347, lon: 136.0917, bearing: 12 } as const;

/** Metres of a degree of latitude, and of longitude at the equator; good to a part in 300. */
const DEGREE_M = 111_200;

const radians = (degrees: number) => (degrees * Math.PI) / 180;

export interface LatLon {
  readonly lat: number;
  readonly lon: number;
}

/** So many metres away from a place of the house. */
export function positionOf([x, y]: Vec, away: { readonly east: number; readonly north: number }): LatLon {
  const [c, s] = [Math.cos(radians(SITE.bearing)), Math.sin(radians(SITE.bearing))];
  const [east, north] = [(x * c + y * s) / 1000 + away.east, (y * c - x * s) / 1000 + away.north];
  return {
    lat: SITE.lat + north / DEGREE_M,
    lon: SITE.lon + east / (DEGREE_M * Math.cos(radians(SITE.lat))),
  };
}

/** From true north, 0 to 360. */
export function bearingOf([fromX, fromY]: Vec, [toX, toY]: Vec): number {
  const inHouse = (Math.atan2(toX - fromX, toY - fromY) * 180) / Math.PI;
  return (((inHouse + SITE.bearing) % 360) + 360) % 360;
}
