import { chanceOf, fraction, layered, noise, ramp } from '../noise.ts';
import { linear, type Look, type Spot, type Surface } from './surface.ts';

interface Timber {
  readonly early: ReturnType<typeof linear>;
  readonly late: ReturnType<typeof linear>;
  /** How grey the weather has made it. */
  readonly grey: number;
}

/** Cedar and cypress fresh from the plane are greyer in a photo than the hand that paints them believes. */
const FRESH: Timber = { early: linear(0xb8a588), late: linear(0x917750), grey: 0.38 };
const OLD: Timber = { early: linear(0x958672), late: linear(0x6e6050), grey: 0.75 };

const HEART = linear(0x9a755a);
const SAP = linear(0xc6b799);
const KNOT = linear(0x6b4a30);
const ROUND_KNOT = linear(0x8f6d4b);
const WEATHER = linear(0x87827a);
const STAIN = linear(0x6b5642);
const SOIL = linear(0x6e5f4e);

const KNOT_EVERY_M = 0.55;

const looksLike =
  (timber: Timber): Look =>
  (spot, on) => {
    on.plain(timber.early);
    grain(spot, timber, on);
    tone(spot, on);
    knots(spot, on);
    weather(spot, timber, on);
  };

export const freshWood = looksLike(FRESH);
export const oldWood = looksLike(OLD);

/** Year rings about a pith that lies somewhere beside the middle, drawn in at the ends and along the sides alike. */
function grain({ lx, ly, lz, tone: own, spread }: Spot, timber: Timber, on: Surface): void {
  const wander = noise(lx * 0.35 + own * 90, ly * 2, lz * 2) * 0.06 - 0.03;
  const [y, z] = [ly + fraction(own * 13.7) * 0.2 - 0.1 + wander, lz + 0.01 + fraction(own * 71.3) * 0.1];
  const wave = (layered(lx * 1.1 + own * 50, ly * 9, lz * 9, 3) - 0.45) * 0.012;
  const radius = Math.sqrt(y * y + z * z) + wave;
  const width = 0.0042 + 0.0022 * fraction(own * 29.1);
  // Rings thinner than a pixel are one tone.
  const sharp = 1 - ramp(spread, width * 0.35, width * 1.1);
  const age = fraction(radius / width);
  const isNear = spread < 0.003;
  const fibre = isNear ? layered(lx * 5, ly * 420, lz * 420, 2) : 0.375;
  on.mix(timber.late, 0.7 * (age * age * Math.sqrt(age) * sharp + 0.3 * (1 - sharp)));
  on.mix(timber.late, 0.3 * ramp(fibre, 0.22, 0.6));
  on.mix(HEART, 0.5 * ramp(radius, 0.075, 0.03));
  on.mix(SAP, 0.3 * ramp(radius, 0.09, 0.13));
  on.shine(0.3, 0.42 + 0.18 * ramp(fibre, 0.2, 0.6));
  if (isNear) {
    on.bendX = (fibre - 0.375) * 0.08;
    on.bendY = (fibre - 0.375) * 0.13;
    on.bendZ = -on.bendY;
  }
}

/** No two pieces of one load are of one colour. */
function tone({ tone: own }: Spot, on: Surface): void {
  const light = 0.56 + 0.4 * fraction(own * 5.31);
  const warm = fraction(own * 3.7) - 0.5;
  on.dim(light * (1 + 0.08 * warm), light, light * (1 - 0.16 * warm));
}

/** One in each length of timber, or none; drawn out along it. */
function knots({ lx, ly, lz, tone: own }: Spot, on: Surface): void {
  const cell = Math.floor(lx / KNOT_EVERY_M);
  const seed = Math.floor(own * 65_535);
  const chance = chanceOf(cell * 131 + seed);
  if (chance > 0.6) return;
  const along = (cell + 0.2 + 0.6 * chanceOf(cell * 733 + 17 + seed)) * KNOT_EVERY_M - lx;
  const across = (Math.abs(ly) > Math.abs(lz) ? lz : ly) - Math.sin(chance * 25) * 0.03;
  const ragged = 0.003 * (layered(lx * 60, ly * 60, lz * 60, 2) - 0.4);
  const far = Math.sqrt(along * along * 0.55 + across * across) + ragged;
  on.mix(KNOT, 0.8 * ramp(far, 0.011, 0.006));
  on.mix(ROUND_KNOT, 0.35 * ramp(far, 0.028, 0.01));
}

function weather({ lx, ly, lz, z, tone: own }: Spot, { grey }: Timber, on: Surface): void {
  const broad = layered(lx * 0.8 + own * 9, ly * 5, lz * 5, 3);
  const blot = layered(lx * 2.2, ly * 14 + own * 7, lz * 14, 3);
  on.mix(WEATHER, grey * ramp(broad, 0.36, 0.62));
  on.mix(STAIN, 0.22 * ramp(blot, 0.48, 0.66));
  on.mix(SOIL, 0.55 * ramp(z - broad * 0.5, 0.35, -0.2));
}
