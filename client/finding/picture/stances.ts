import { apart, type Line } from './apart.ts';
import type { DrawnAxis } from './drawn-axis.ts';
import { descend } from './least-squares.ts';
import { pinhole, type Stance } from './pinhole.ts';

/** A member whose place is known, with what was drawn around it. */
export interface Known {
  readonly drawn: DrawnAxis;
  readonly line: Line;
}

/** A picture with members that are known in it. */
export interface Sighted {
  readonly known: readonly Known[];
  readonly tallness: number;
  readonly hand: 1 | -1;
}

/** How cameras are usually held on site, with how far that goes. Common practice. */
const EYE_M = { at: 2, give: 2.5 };
const PITCH = { at: 0, give: 0.35 };
const ROLL = { at: 0, give: 0.05 };
const LENS_35MM = { at: 28, give: 0.2 };
const REACH_M = 12;

/** All that is to be small where a camera stood: what it would see elsewhere than drawn, and how oddly it was held. */
export function offOf({ known, tallness, hand }: Sighted, middle: readonly [number, number]) {
  const usualZoom = Math.log((LENS_35MM.at / Math.hypot(24, 36)) * Math.hypot(1, tallness));
  return (at: readonly number[]): number[] => {
    const stance = at as unknown as Stance;
    const camera = pinhole(stance, hand);
    const [x, y, z, , pitch, roll, zoom] = stance;
    return [
      (x - middle[0]) / REACH_M,
      (y - middle[1]) / REACH_M,
      (z - EYE_M.at) / EYE_M.give,
      (pitch - PITCH.at) / PITCH.give,
      (roll - ROLL.at) / ROLL.give,
      (zoom - usualZoom) / LENS_35MM.give,
      ...known.flatMap(({ drawn, line }) => apart(drawn, line, camera, tallness)),
    ];
  };
}

const BEARINGS = 12;
const DISTANCES_M = [2.5, 5, 9];
const KEPT = 4;
const FIRST_STEPS = 6;
const MORE_STEPS = 25;

export interface Found {
  readonly at: readonly number[];
  readonly sum: number;
}

/** From where the picture may have been taken, the likeliest first, by what is known in it. */
export function stancesOf(
  sighted: Sighted,
  off: (at: readonly number[]) => number[],
  middle: readonly [number, number],
): Found[] {
  const zoom = Math.log((LENS_35MM.at / Math.hypot(24, 36)) * Math.hypot(1, sighted.tallness));
  const starts = DISTANCES_M.flatMap((distance) =>
    Array.from({ length: BEARINGS }, (_, i): Stance => {
      const yaw = (2 * Math.PI * i) / BEARINGS;
      return [
        middle[0] - distance * Math.cos(yaw),
        middle[1] - distance * Math.sin(yaw),
        EYE_M.at,
        yaw,
        0,
        0,
        zoom,
      ];
    }),
  );
  const begun = starts.map((start) => descend(off, start, FIRST_STEPS)).sort((a, b) => a.sum - b.sum);
  const ends = begun.slice(0, KEPT).map(({ at }) => descend(off, at, MORE_STEPS));
  return ends.sort((a, b) => a.sum - b.sum);
}
