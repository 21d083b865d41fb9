import type { Mm } from './length.ts';

/**
 * Where a member lies, as the schedule states it. `from` and `to` are crossings of the grid, `from` the
 * lower end; base and top are the heights of its axis at these two ends above the level, or above the
 * datum where no level is named; of what lies, where both are stated, its underside and its top
 * (faces-of.ts). Section in mm: width × depth in plan (along the first and the second
 * lines' positions) of what stands, thickness × height of what lies or slopes. null: not stated.
 */
export interface SetOut {
  readonly from: string;
  readonly to: string;
  readonly level: string;
  readonly base: number | null;
  readonly top: number | null;
  readonly width: number | null;
  readonly depth: number | null;
}

export interface Point {
  readonly x: Mm;
  readonly y: Mm;
  readonly z: Mm;
}

/** How a kind usually runs and how thick it usually is: what a schedule leaves unsaid. */
export interface UsualLie {
  readonly lies: 'upright' | 'level' | 'sloping' | 'none';
  readonly section: readonly [widthMm: number, depthMm: number] | null;
}

/** A member in space. Stretches of it are measured from `start`. */
export interface Axis {
  readonly start: Point;
  readonly end: Point;
  readonly length: Mm;
  readonly width: Mm;
  readonly depth: Mm;
  readonly runs: 'upright' | 'level' | 'sloping';
  /** Label of the level that is stated or stands below it; null without levels. */
  readonly level: string | null;
  /** What the schedule does not say and was assumed. */
  readonly assumed: readonly ('base' | 'top' | 'section')[];
}

export const AXIS_PROBLEMS = [
  'from-missing',
  'to-missing',
  'unknown-mark',
  'ambiguous-mark',
  'unknown-level',
  'top-missing',
  'base-above-top',
  'no-length',
  'section-impossible',
  'section-larger-than-bay',
] as const;

export interface AxisProblem {
  readonly reason: (typeof AXIS_PROBLEMS)[number];
  readonly field: keyof SetOut;
}
