import type { Size } from '../camera.ts';
import { ramp } from '../noise.ts';
import type { Light } from './blur.ts';

export const CORNERS = ['top-left', 'top-right', 'bottom-left', 'bottom-right'] as const;
export type Corner = (typeof CORNERS)[number];

/** Of somebody's thumb before the lens: red where the light shines through, out of focus. */
const THUMB = [0.62, 0.27, 0.2] as const;
/** How far it reaches in, and how soft its edge is, as shares of the picture's width. */
const REACH = 0.3;
const SOFT = 0.09;

/** How much of a pixel the thumb covers, 0 to 1. */
export function thumbShare({ width, height }: Size, corner: Corner, x: number, y: number): number {
  const fromSide = corner.endsWith('right') ? width - x : x;
  const fromEnd = corner.startsWith('bottom') ? height - y : y;
  // An oval with its middle outside the picture.
  const far = Math.hypot((fromSide + 0.05 * width) / 1.25, fromEnd + 0.08 * width) / width;
  return ramp(far, REACH + SOFT / 2, REACH - SOFT / 2);
}

export function withThumb(light: Light, corner: Corner): Light {
  const { width, height } = light;
  const values = Float32Array.from(light.values);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const share = thumbShare(light, corner, x + 0.5, y + 0.5);
      const p = 3 * (y * width + x);
      for (let k = 0; k < 3; k += 1)
        values[p + k] = values[p + k]! * (1 - share) + THUMB[k]! * (0.5 + 0.9 * (1 - share)) * share;
    }
  return { width, height, values };
}
