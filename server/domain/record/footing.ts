import { clipLine, type Convex } from '../frame/clip.ts';
import type { Grid } from '../frame/grid.ts';
import { EYE_HEIGHT_MM, type StandingPlace } from './standing-places.ts';

/** What somebody stands on: the lowest level, a floor that has closed, or nothing that is on record. */
export const FOOTINGS = ['ground', 'floor', 'none'] as const;
export type Footing = (typeof FOOTINGS)[number];

/** A floor lies no farther below or above its level: boards and joists. Common practice. */
const ABOUT_LEVEL_MM = 400;

/**
 * What a place stands on, given the bodies of the floors that have closed (house coordinates, mm). 'none' tells
 * of no hole, only that nobody has said there is a floor.
 */
export function footingOf(place: StandingPlace, floors: readonly Convex[], { levels }: Grid): Footing {
  if (place.level === null || place.level === levels[0]?.label) return 'ground';
  const { x, y, z } = place.eye;
  const foot = z - EYE_HEIGHT_MM;
  const isLaid = floors.some(
    (floor) => clipLine([x, y, foot - ABOUT_LEVEL_MM], [0, 0, 1], 2 * ABOUT_LEVEL_MM, floor) !== null,
  );
  return isLaid ? 'floor' : 'none';
}
