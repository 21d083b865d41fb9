import { fraction, layered, noise, ramp } from '../noise.ts';
import { linear, relief, type Look } from './surface.ts';

const BAMBOO = linear(0x8a7d5c);
const BAMBOO_DRY = linear(0x9c8d6c);
const BAMBOO_GREEN = linear(0x7f8160);
const BAMBOO_SPLIT = linear(0x695b43);
const NODE = linear(0x564a34);

export const bamboo: Look = ({ lx, ly, lz, tone, spread }, on) => {
  on.plain(BAMBOO);
  const fibre = spread < 0.003 ? layered(lx * 6, ly * 300, lz * 300, 2) : 0.375;
  on.mix(BAMBOO_DRY, Math.min(1, tone * 2));
  on.mix(BAMBOO_GREEN, 0.8 * Math.max(0, tone * 2 - 1));
  on.mix(BAMBOO_SPLIT, 0.55 * ramp(fibre, 0.3, 0.6));
  on.mix(NODE, 0.7 * ramp(Math.abs(fraction(lx / 0.27 + tone * 7) - 0.5), 0.035, 0));
  on.shine(0.4, 0.4);
};

const STRAW_ROPE = linear(0x8c7a55);
const STRAW_LIGHT = linear(0xb0a07a);

export const rope: Look = ({ lx, ly, lz }, on) => {
  on.plain(STRAW_ROPE);
  on.mix(STRAW_LIGHT, noise(lx * 300, ly * 300, lz * 300));
};

const ZINC = linear(0x85888a);
const ZINC_LIGHT = linear(0xabaeb0);
const RUST = linear(0x7a5d46);

export const steel: Look = ({ lx, ly, lz, tone }, on) => {
  on.plain(ZINC);
  on.mix(ZINC_LIGHT, layered(lx * 9, ly * 9, lz * 9, 3));
  on.mix(RUST, 0.5 * ramp(layered(lx * 4, ly * 9, tone * 9, 4), 0.55, 0.65));
  on.dim(0.8);
  on.shine(1.5, 0.4);
};

const BLUE = linear(0x24487a);
const BLUE_LIGHT = linear(0x3a669c);
const DUST = linear(0x8a8070);

/** The blue sheet of every site: woven, dusty in its hollows. */
export const tarp: Look = (spot, on) => {
  const { x, y, z } = spot;
  on.plain(BLUE);
  on.mix(BLUE_LIGHT, layered(x * 2, y * 2, z * 2, 3) * 1.4 - 0.2);
  on.mix(DUST, 0.05 + 0.25 * ramp(layered(x * 1.3, y * 1.3, z * 1.3, 5), 0.36, 0.66));
  relief(spot, (a, b, c) => 0.002 * layered(a * 30, b * 30, c * 30, 2), 0.01, on);
  on.shine(0.7, 0.42);
};

const BUCKETS = [linear(0x8d4a30), linear(0x303234), linear(0x465d73)] as const;

export const bucket: Look = ({ x, y, z, tone }, on) => {
  on.plain(BUCKETS[Math.min(2, Math.floor(tone * 3))]!);
  on.mix(DUST, 0.1 + 0.5 * ramp(z + 0.12 * layered(x * 9, y * 9, z * 9, 3), 0.24, 0.05));
  on.shine(0.5, 0.45);
};

const BOARD = linear(0x94805f);
const BOARD_LIGHT = linear(0xb7a281);
const SPOTTED = linear(0x786b58);

/** Sawn boards, not planed. */
export const board: Look = ({ lx, ly, lz, tone }, on) => {
  on.plain(BOARD);
  on.mix(BOARD_LIGHT, ramp(layered(lx * 3 + tone * 31, ly * 30, lz * 30, 4), 0.3, 0.62));
  const light = 0.66 + 0.34 * fraction(tone * 17);
  on.dim(light, light * 0.99, light * 0.96);
  on.mix(SPOTTED, 0.5 * ramp(layered(lx * 4, ly * 6, tone * 9, 4), 0.42, 0.6));
  on.shine(0.15, 0.55);
};

const SACK = linear(0xaba89e);
const SACK_LIGHT = linear(0xc6c3b8);

export const sack: Look = (spot, on) => {
  const { x, y, z } = spot;
  on.plain(SACK);
  on.mix(SACK_LIGHT, layered(x * 30, y * 30, z * 30, 3));
  on.mix(DUST, 0.5 * ramp(layered(x * 8, y * 8, z * 8, 4), 0.42, 0.62));
  relief(spot, (a, b, c) => 0.006 * layered(a * 28, b * 28, c * 28, 3), 0.012, on);
};
