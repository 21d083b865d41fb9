import type { Film } from '../light/film.ts';
import { NOBODY } from '../mesh/mesh.ts';
import { Random } from '../random.ts';
import { moved, softened, type Light } from './blur.ts';
import { smoothed } from './smooth.ts';
import { thumbShare, withThumb, type Corner } from './thumb.ts';

/** What went wrong with a photo. A tilt is the roll of its view. */
export interface Faults {
  /** Steps of exposure more or less: -3 in the dark, -1.5 against the light. */
  readonly steps?: number;
  /** How far the camera moved while it was open, as shares of the picture's width. */
  readonly moved?: readonly [across: number, down: number];
  readonly thumb?: Corner;
  /** How many times more noise than in daylight. */
  readonly noise?: number;
}

const EXPOSURE = 0.92 * 2 ** -0.35;
/** What a camera takes the middle of a picture for, and how far it gives way to one that is brighter or darker. */
const MIDDLE = 0.41;
const GIVES_WAY = 0.55;
const MOST_STEPS = 1.6;
const WHITE = [0.99, 1, 1.02] as const;
const BLUR_PX = 0.5;
const NOISE = 0.014;
const VIGNETTE = 0.24;

/** From film to the red, green and blue of a photo; the same film, faults and seed give the same bytes. */
export function develop(film: Film, seed: number, faults: Faults = {}): Uint8Array {
  const { width, height } = film;
  const lit: Light = { width, height, values: smoothed(film, passesFor(width)) };
  const [across, down] = faults.moved ?? [0, 0];
  const blurred = softened(moved(lit, [across * width, down * width]), BLUR_PX);
  return exposed(faults.thumb ? withThumb(blurred, faults.thumb) : blurred, seed, faults);
}

/** How a camera meters: by the mean of the logarithms, so that a little sun in the dark does not blacken it. */
function meteredSteps(values: Float32Array): number {
  let sum = 0;
  for (let p = 0; p < values.length; p += 3)
    sum += Math.log2(0.004 + 0.25 * values[p]! + 0.65 * values[p + 1]! + 0.1 * values[p + 2]!);
  const steps = GIVES_WAY * (Math.log2(MIDDLE) - sum / (values.length / 3));
  return Math.max(-MOST_STEPS, Math.min(MOST_STEPS, steps));
}

/** One pass is best where the picture is small, two where it is larger; one more takes the grain of few samples. */
const passesFor = (width: number) => (width < 400 ? 1 : width < 1200 ? 2 : 3);

/** What a thumb covers shows no member. */
export function seenMembers(film: Film, { thumb }: Faults = {}): Int32Array {
  if (!thumb) return film.member;
  return film.member.map((member, p) => {
    const [x, y] = [(p % film.width) + 0.5, Math.floor(p / film.width) + 0.5];
    return thumbShare(film, thumb, x, y) > 0.5 ? NOBODY : member;
  });
}

function exposed(
  { width, height, values }: Light,
  seed: number,
  { steps = 0, noise = 1 }: Faults,
): Uint8Array {
  const random = new Random(seed);
  const power = EXPOSURE * 2 ** (meteredSteps(values) + steps);
  const bytes = new Uint8Array(3 * width * height);
  for (let p = 0; p < width * height; p += 1) {
    const [x, y] = [(p % width) / width - 0.5, (Math.floor(p / width) - height / 2) / width];
    const light = power * (1 - VIGNETTE * ((x * x + y * y) / 0.39) ** 1.2);
    const grain = noise * NOISE * (random.next() + random.next() + random.next() - 1.5);
    const colour = paled([0, 1, 2].map((k) => values[3 * p + k]! * light * WHITE[k]!));
    for (let k = 0; k < 3; k += 1) {
      const tone = Math.min(1, filmic(colour[k]! * 0.55)) ** (1 / 2.2);
      const own = grain + noise * NOISE * 0.9 * (random.next() - 0.5);
      bytes[3 * p + k] = Math.max(
        0,
        Math.min(255, Math.round(255 * (tone + own * (0.5 + 0.9 * (1 - tone))))),
      );
    }
  }
  return bytes;
}

/** Cameras lose colour where it is bright. */
function paled(colour: readonly number[]): number[] {
  const grey = 0.25 * colour[0]! + 0.65 * colour[1]! + 0.1 * colour[2]!;
  const share = Math.min(0.5, 0.1 + 0.18 * Math.max(0, grey - 0.8));
  return colour.map((value) => value + (grey - value) * share);
}

/** The curve of film: K. Narkowicz, "ACES filmic tone mapping curve" (2016). */
function filmic(x: number): number {
  return x <= 0 ? 0 : (x * (2.51 * x + 0.03)) / (x * (2.43 * x + 0.59) + 0.14);
}
