import { NOBODY } from '../mesh/mesh.ts';
import { sharedFloats, sharedInts } from '../mesh/shared-memory.ts';
import type { Size } from '../camera.ts';

/** What is gathered of each pixel, in memory that threads share: what is seen = light × colour + shine. */
export interface Film extends Size {
  /** Light that falls there, three a pixel; without the pattern of what it falls on, so that it can be smoothed. */
  readonly light: Float32Array;
  readonly colour: Float32Array;
  /** What comes as it is: sky, mirrors, gloss, haze. */
  readonly shine: Float32Array;
  /** Mean normal and distance (m), four a pixel. */
  readonly guide: Float32Array;
  /** Of the mean of its light. */
  readonly variance: Float32Array;
  /** The member at the middle of the pixel, or NOBODY. */
  readonly member: Int32Array;
}

export function newFilm({ width, height }: Size): Film {
  const pixels = width * height;
  return {
    ...{ width, height },
    light: sharedFloats(3 * pixels),
    colour: sharedFloats(3 * pixels),
    shine: sharedFloats(3 * pixels),
    guide: sharedFloats(4 * pixels),
    variance: sharedFloats(pixels),
    member: sharedInts(pixels).fill(NOBODY),
  };
}
