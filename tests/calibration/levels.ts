import type { Level } from './judge.ts';

/** Blur in shares of the narrow side by which the limits were chosen. */
export const CHOSEN_SHARES = [0, 0.0117, 0.0234, 0.035, 0.05, 0.0854, 0.12, 0.17];
/** By which they are tried, between the others. */
export const HELD_SHARES = [0.006, 0.0175, 0.042, 0.065, 0.1, 0.14];
export const SIZES = [16, 32, 64, 128];

export const levels = (shares: readonly number[], sizes: readonly number[] = SIZES): Level[] =>
  sizes.flatMap((across) => shares.map((share) => ({ across, share })));
