import { fraction } from '../noise.ts';
import { Random, pairSeed } from '../random.ts';

/** What the first chances of a sample are for; those after them are plain. */
export const DIMENSIONS = {
  pixelX: 0,
  pixelY: 1,
  sunFar: 2,
  sunTurn: 3,
  bounceFar: 4,
  bounceTurn: 5,
} as const;
const COUNT = 6;

/** Powers of 1/φ, φ⁷ = φ + 1: M. Roberts, "The unreasonable effectiveness of quasirandom sequences" (2018). */
const STEPS = stepsOf(COUNT);

function stepsOf(count: number): Float64Array {
  let root = 1;
  for (let i = 0; i < 60; i += 1) root = (1 + root) ** (1 / (count + 1));
  return Float64Array.from({ length: count }, (_, i) => root ** -(i + 1));
}

/**
 * The chances of a pixel's samples: spread evenly, each pixel's turned by its own. They depend on seed and pixel
 * only, and so does the picture: not on which thread comes to which pixel when.
 */
export class Samples {
  private readonly random = new Random(0);
  private readonly turn = new Float64Array(COUNT);
  private sample = 0;

  begin(pixel: number, seed: number): void {
    this.random.reseed(pairSeed(pixel, seed));
    for (let i = 0; i < COUNT; i += 1) this.turn[i] = this.random.next();
  }

  next(sample: number): void {
    this.sample = sample;
  }

  even(dimension: number): number {
    return fraction(this.turn[dimension]! + this.sample * STEPS[dimension]!);
  }

  plain(): number {
    return this.random.next();
  }
}

/** From an even chance to the middle-heavy one of a tent from -1 to 1. */
export function tent(chance: number): number {
  const twice = 2 * chance;
  return twice < 1 ? Math.sqrt(twice) - 1 : 1 - Math.sqrt(2 - twice);
}
