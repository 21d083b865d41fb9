import type { LocalM } from './geodesic.ts';

/** What a camera takes in, from above: two edges of equal length from where it stood. Metres, degrees. */
export interface ViewCone {
  readonly left: LocalM;
  readonly right: LocalM;
}

/** `opening` is the horizontal field of view, less than 180°; `lengthM` that of the edges. */
export function viewCone(from: LocalM, trueDegrees: number, opening: number, lengthM: number): ViewCone {
  return {
    left: ahead(from, trueDegrees - opening / 2, lengthM),
    right: ahead(from, trueDegrees + opening / 2, lengthM),
  };
}

/** The point so far ahead; degrees clockwise from north. */
export function ahead({ eastM, northM }: LocalM, degrees: number, lengthM: number): LocalM {
  const radians = (degrees * Math.PI) / 180;
  return { eastM: eastM + lengthM * Math.sin(radians), northM: northM + lengthM * Math.cos(radians) };
}
