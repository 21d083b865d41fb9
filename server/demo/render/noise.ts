import { Random } from './random.ts';

const CELLS = 65_536;
const TABLE = Float32Array.from({ length: CELLS }, tableOf(99));

function tableOf(seed: number): () => number {
  const random = new Random(seed);
  return () => random.next();
}

const smooth = (t: number) => t * t * (3 - 2 * t);
const at = (hash: number) => TABLE[(hash ^ (hash >>> 16)) & (CELLS - 1)]!;
const blend = (a: number, b: number, t: number) => a + (b - a) * t;

/** Value noise: chance at whole coordinates, smooth between them; 0 to 1. */
export function noise(x: number, y: number, z: number): number {
  const [xi, yi, zi] = [Math.floor(x), Math.floor(y), Math.floor(z)];
  const u = smooth(x - xi);
  const v = smooth(y - yi);
  const w = smooth(z - zi);
  const [x0, x1] = [Math.imul(xi, 7919), Math.imul(xi + 1, 7919)];
  const [y0, y1] = [Math.imul(yi, 15731), Math.imul(yi + 1, 15731)];
  const [z0, z1] = [Math.imul(zi, 789221), Math.imul(zi + 1, 789221)];
  const near = blend(
    blend(at(x0 + y0 + z0), at(x1 + y0 + z0), u),
    blend(at(x0 + y1 + z0), at(x1 + y1 + z0), u),
    v,
  );
  const far = blend(
    blend(at(x0 + y0 + z1), at(x1 + y0 + z1), u),
    blend(at(x0 + y1 + z1), at(x1 + y1 + z1), u),
    v,
  );
  return blend(near, far, w);
}

/** Sum of noises, each of twice the frequency and half the height of the one before; below 1, mostly about 0.45. */
export function layered(x: number, y: number, z: number, octaves: number): number {
  let [sum, height] = [0, 0.5];
  for (let i = 0; i < octaves; i += 1) {
    sum += height * noise(x, y, z);
    x = x * 2.03 + 17.1;
    y = y * 2.03 + 9.7;
    z = z * 2.03 + 5.3;
    height *= 0.5;
  }
  return sum;
}

/** 0 below `from`, 1 above `to`, straight between; also where `from` is the greater. */
export function ramp(value: number, from: number, to: number): number {
  const t = (value - from) / (to - from);
  return t < 0 ? 0 : t > 1 ? 1 : t;
}

export const fraction = (x: number): number => x - Math.floor(x);

/** A number from 0 to 1 that belongs to a whole number. */
export const chanceOf = (whole: number): number => TABLE[whole & (CELLS - 1)]!;
