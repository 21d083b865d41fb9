import { layered, noise, ramp } from '../noise.ts';
import { linear, relief, type Look, type Spot, type Surface } from './surface.ts';

const MUD = linear(0x5b5146);
const DUST = linear(0x8d8375);
const LOAM = linear(0x69604f);
const GRIT = linear(0x9b9489);
const WET = linear(0x453c33);
const TRODDEN = linear(0x4f463b);
const TURF = linear(0x59603a);

/** Turf begins where the crew does not walk. */
const YARD_M = { x: 3.6, y: 2.8, radius: 8 };

export const ground: Look = (spot, on) => {
  const { x, y, z } = spot;
  on.plain(MUD);
  const octaves = spot.spread < 0.01 ? 6 : 4;
  const rough = relief(spot, (a, b, c) => 0.004 * layered(a * 9, b * 9, c * 9, octaves), 0.04, on) / 0.004;
  const grit = layered(x * 70, y * 70, 1, 3);
  on.mix(DUST, ramp(rough, 0.25, 0.7));
  on.mix(LOAM, 0.6 * ramp(layered(x * 0.35, y * 0.35, 3, 5), 0.33, 0.55));
  on.mix(GRIT, 0.28 * ramp(grit, 0.36, 0.62));
  on.mix(WET, 0.55 * ramp(layered(x * 0.8 + 4, y * 0.8, 9, 4), 0.46, 0.58));
  on.mix(WET, 0.8 * ramp(z, -0.22, -0.4));
  on.mix(TRODDEN, 0.3 * ramp(layered(x * 3.1, y * 3.1, 2, 3), 0.5, 0.6));
  turf(spot, grit, on);
};

function turf({ x, y }: Spot, grit: number, on: Surface): void {
  const outside = ramp(Math.hypot(x - YARD_M.x, y - YARD_M.y), YARD_M.radius - 2.5, YARD_M.radius + 3);
  const patches = ramp(layered(x * 0.5, y * 0.5, 5, 5), 0.4, 0.54);
  on.mix(TURF, 0.75 * outside * patches * (0.7 + 0.6 * grit));
}

const STONE = linear(0x716e69);
const STONE_LIGHT = linear(0xa19d96);
const STONE_DARK = linear(0x4f4d49);
const SOIL = linear(0x6e5f4e);

export const stone: Look = (spot, on) => {
  const { lx, ly, lz, z, tone } = spot;
  on.plain(STONE);
  const own = { x: lx, y: ly, z: lz };
  const rough = relief(own, (a, b, c) => 0.006 * layered(a * 22, b * 22, c * 22, 4), 0.01, on) / 0.006;
  on.mix(STONE_LIGHT, ramp(rough, 0.25, 0.65));
  on.mix(STONE_DARK, 0.6 * ramp(layered(lx * 160, ly * 160, lz * 160, 2), 0.4, 0.6));
  const light = 0.62 + 0.38 * tone;
  on.dim(light, light * 0.98, light * 0.95);
  on.mix(SOIL, 0.65 * ramp(z, 0.07, 0));
};

const COAT = linear(0x5f5142);
const COAT_LIGHT = linear(0x7d6d5a);
const COAT_DARK = linear(0x4b4035);
const STRAW = linear(0xa89a75);
const DAMP = linear(0x41372d);
const CRACK = linear(0x30271f);

/** Earth with cut straw in it, thrown on and drawn out with a trowel that leaves its strokes. */
export const plaster: Look = (spot, on) => {
  const { lx, ly, lz } = spot;
  on.plain(COAT);
  const grain = relief(spot, coatHeight, 0.005, on) / 0.011;
  on.mix(COAT_LIGHT, ramp(layered(lx * 3, ly * 3, lz * 3, 5), 0.28, 0.62));
  on.mix(COAT_DARK, 0.6 * ramp(grain, 0.52, 0.34));
  strokes(spot, on);
  straw(spot, on);
  on.mix(DAMP, 0.5 * ramp(layered(lx * 1.3 + 7, ly * 1.3, 1, 4), 0.42, 0.6));
  cracks(spot, on);
};

function coatHeight(x: number, y: number, z: number): number {
  return 0.008 * layered(x * 24, y * 24, z * 24, 4) + 0.003 * layered(x * 110, y * 110, z * 110, 2);
}

/** Where the trowel drew the coat out it is smooth and a little lighter, in bows a hand wide. */
function strokes({ lx, ly }: Spot, on: Surface): void {
  const bow = ly + 0.06 * Math.sin(lx * 3.1) + 0.1 * noise(lx * 2.2, ly * 2.2, 5);
  const stroke = noise(lx * 2.6, bow * 17, 6);
  on.mix(COAT_LIGHT, 0.3 * ramp(stroke, 0.55, 0.8));
  on.mix(COAT_DARK, 0.3 * ramp(stroke, 0.4, 0.2));
}

/** Short pieces, each field of them lying its own way. */
function straw({ lx, ly, lz, spread }: Spot, on: Surface): void {
  const turn = noise(lx * 14, ly * 14, 3) * 9;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const fibre = noise((lx * c + ly * s) * 22, (ly * c - lx * s) * 230, lz * 10);
  on.mix(STRAW, 0.06 + 0.55 * ramp(spread, 0.008, 0.003) * ramp(fibre, 0.82, 0.9));
}

function cracks({ lx, ly, tone, spread }: Spot, on: Surface): void {
  if (spread > 0.006) return;
  const seam = Math.abs(layered(lx * 4 + tone * 5, ly * 4, 2, 4) - 0.46);
  on.mix(CRACK, 0.6 * ramp(seam, 0.006, 0) * ramp(noise(lx * 2, ly * 2, 8), 0.4, 0.7));
}
