import type { StatedGrid } from '../../contract/frame-shapes.ts';
import type { Mm } from '../length.ts';
import type { Zone } from '../zone.ts';
import type { InventedMember } from './invented-house.ts';

/** A ken of six shaku in mm as building merchants count it: 1820. Common practice. */
const BAY_MM = 1820;

type Heights = Record<string, number>;

export function gridOf(first: string, second: string, levels: Heights): StatedGrid {
  const lines = (labels: string) => [...labels].map((label, i) => ({ label, at: (i * BAY_MM) as Mm }));
  return {
    first: { lines: lines(first), runs: 'leftward' },
    second: { lines: lines(second), runs: 'downward' },
    levels: Object.entries(levels).map(([label, height]) => ({ label, height: height as Mm })),
    unit: 'mm',
  };
}

/** Roof, as a place. */
export const ROOF = '小屋';

/**
 * Where a member lies: crossings, the level and heights above it; without a top what lies is level. Its place is
 * called by the level, unless it is said.
 */
interface Lie {
  readonly from: string;
  readonly to?: string;
  readonly level: string;
  readonly place?: string;
  readonly base?: number;
  readonly top?: number;
}

type Section = readonly [width: number, depth: number];

/** Makes members of one kind; mark and place say where it lies. */
export function membersOf(kind: string, [width, depth]: Section) {
  return (mark: string, { from, to = '', level, place = level, base, top }: Lie): InventedMember => ({
    ...{ mark, kind, place },
    setOut: { from, to, level, base: base ?? null, top: top ?? null, width, depth },
  });
}

/** Every line of a family with the middles between them: い, 又い, ろ. */
export function withMiddles(labels: string): string[] {
  return [...labels].flatMap((label, i) => (i < labels.length - 1 ? [label, `又${label}`] : [label]));
}

type Wall = Extract<Zone, { shape: 'wall' }>;
type Of<Shape extends Zone['shape']> = Omit<Extract<Zone, { shape: Shape }>, 'shape'>;

/** Both faces of a wall on a line, from line to line and height to height. */
export function wall(
  over: Wall['over'],
  family: Wall['family'],
  [line, from, to]: readonly [line: string, from: string, to: string],
  [bottom, top]: readonly [bottom: number, top: number],
): Zone {
  return { shape: 'wall', over, family, line, from, to, bottom, top, face: 'both' };
}

export const flat = (facts: Of<'flat'>): Zone => ({ shape: 'flat', ...facts });
export const slope = (facts: Of<'slope'>): Zone => ({ shape: 'slope', ...facts });
