import { fraction, layered, ramp } from '../noise.ts';
import { linear, type Look } from './surface.ts';

const SHADE: readonly [number, number, number] = [0.045, 0.066, 0.026];
const SUNLIT: readonly [number, number, number] = [0.15, 0.185, 0.075];

export const leaf: Look = ({ tone }, on) => {
  on.plain(SHADE);
  on.mix(SUNLIT, tone * tone);
  on.shine(0.4, 0.5);
};

const BLADE: readonly [number, number, number] = [0.06, 0.08, 0.026];
const DRY: readonly [number, number, number] = [0.23, 0.21, 0.11];

export const grass: Look = ({ lz, tone }, on) => {
  on.plain(BLADE);
  on.mix(DRY, tone * tone);
  on.dim(0.5 + 0.5 * lz);
};

const BARK = linear(0x3b332c);
const BARK_LIGHT = linear(0x685c50);

export const bark: Look = ({ x, y, z }, on) => {
  on.plain(BARK);
  on.mix(BARK_LIGHT, layered(x * 9, y * 9, z * 4, 4));
};

const RENDERED = [linear(0x9d978b), linear(0x87827a), linear(0x6f675c)] as const;
const STREAK = linear(0x6b655c);

export const houseWall: Look = ({ x, y, z, tone }, on) => {
  on.plain(RENDERED[Math.min(2, Math.floor(tone * 3))]!);
  on.mix(STREAK, 0.5 * ramp(layered(x * 2, y * 2, z * 0.4, 4), 0.38, 0.6));
  on.mix(STREAK, 0.4 * ramp(fraction(z / 0.16), 0.1, 0));
};

const TILE = linear(0x484c50);
const TILE_LIGHT = linear(0x676c70);
const TILE_GAP = linear(0x26282b);

export const tile: Look = ({ lx, ly, lz }, on) => {
  on.plain(TILE);
  on.mix(TILE_LIGHT, layered(lx * 3, ly * 3, lz, 4));
  on.mix(TILE_GAP, 0.7 * Math.max(ramp(fraction(ly / 0.25), 0.15, 0), 0.6 * ramp(Math.sin(lx * 22), 0.5, 1)));
  on.shine(0.4, 0.45);
};

const WOODED: readonly [number, number, number] = [0.045, 0.065, 0.038];
const CLEARING: readonly [number, number, number] = [0.08, 0.1, 0.055];

export const hill: Look = ({ x, y, z }, on) => {
  on.plain(WOODED);
  on.mix(CLEARING, layered(x * 0.09, y * 0.09, z * 0.09, 5));
};

export const glass: Look = (_, on) => {
  on.plain([0.012, 0.015, 0.018]);
};

const DEEP: readonly [number, number, number] = [0.022, 0.032, 0.03];
const SHALLOW: readonly [number, number, number] = [0.05, 0.055, 0.042];

/** Small waves that the wind from the south-west drives; they flatten out where they are smaller than a pixel. */
export const water: Look = ({ x, y, spread }, on) => {
  on.plain(DEEP);
  on.mix(SHALLOW, ramp(layered(x * 0.2, y * 0.2, 2, 3), 0.35, 0.6));
  const calm = 1 / (1 + (spread * 9) ** 2);
  const height = (a: number, b: number) => layered(a * 1.1 + b * 0.5, b * 2.3 - a * 0.7, 4, 4);
  const step = 0.04;
  const here = height(x, y);
  on.bendX = ((height(x + step, y) - here) / step) * 0.045 * calm;
  on.bendY = ((height(x, y + step) - here) / step) * 0.045 * calm;
};
