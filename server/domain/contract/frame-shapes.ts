import { z } from 'zod';
import type { Grid } from '../frame/grid.ts';
import type { Axis, SetOut } from '../frame/set-out.ts';
import type { Zone } from '../frame/zone.ts';
import type { Stretch } from '../record/stretches.ts';
import { LENGTH_UNITS, type Mm } from '../frame/length.ts';

/** Shapes of the frame in space. Lengths and heights in mm, house coordinates (see frame/grid). */

/** No house is longer than ten kilometres. */
const mm = z.number().min(-10_000_000).max(10_000_000);
const label = z.string().trim().min(1).max(20);
const MmShape = mm.transform((value) => value as Mm);

const linesShape = z
  .array(z.strictObject({ label, at: MmShape }))
  .max(200)
  .readonly();

export const GridShape = z.strictObject({
  first: z.strictObject({ lines: linesShape, runs: z.enum(['rightward', 'leftward']) }),
  second: z.strictObject({ lines: linesShape, runs: z.enum(['upward', 'downward']) }),
  levels: z
    .array(z.strictObject({ label, height: MmShape }))
    .max(50)
    .readonly(),
}) satisfies z.ZodType<Grid>;

const markText = z.string().trim().max(60);

export const SetOutShape = z.strictObject({
  from: markText,
  to: markText,
  level: z.string().trim().max(20),
  base: mm.nullable(),
  top: mm.nullable(),
  width: mm.nullable(),
  depth: mm.nullable(),
}) satisfies z.ZodType<SetOut>;

const familyShape = z.enum(['first', 'second']);

export const ZoneShape = z
  .discriminatedUnion('shape', [
    z.strictObject({
      shape: z.literal('wall'),
      family: familyShape,
      line: label,
      from: label,
      to: label,
      bottom: mm,
      top: mm,
      face: z.enum(['both', 'lower', 'higher']),
      over: z.enum(['between-posts', 'over-posts']),
    }),
    z.strictObject({
      shape: z.literal('flat'),
      corners: z.array(markText.min(1)).min(2).max(40).readonly(),
      bottom: mm,
      top: mm,
    }),
    z.strictObject({
      shape: z.literal('slope'),
      family: familyShape,
      eaves: label,
      ridge: label,
      from: label,
      to: label,
      eavesHeight: mm,
      ridgeHeight: mm,
      below: mm,
    }),
  ])
  .meta({
    description: 'The space that a covering takes; heights in mm above the datum.',
  }) satisfies z.ZodType<Zone>;

export const StretchShape = z
  .strictObject({ from: z.number().min(0), to: z.number().min(0) })
  .meta({ description: 'A part of a member, in mm from its start.' }) satisfies z.ZodType<Stretch>;

/** From one crossing or line along a member to another, as a person says it. */
export const ShownStretch = z.strictObject({ from: markText.min(1), to: markText.min(1) });
export type ShownStretch = z.infer<typeof ShownStretch>;

/** The grid with what a bare number means where its lengths are typed. */
export const StatedGrid = GridShape.extend({ unit: z.enum(LENGTH_UNITS) });
export type StatedGrid = z.infer<typeof StatedGrid>;

const PointShape = z.strictObject({ x: MmShape, y: MmShape, z: MmShape });

export const AxisShape = z.strictObject({
  start: PointShape,
  end: PointShape,
  length: MmShape,
  width: MmShape,
  depth: MmShape,
  runs: z.enum(['upright', 'level', 'sloping']),
  level: z.string().nullable(),
  assumed: z.array(z.enum(['base', 'top', 'section'])).readonly(),
}) satisfies z.ZodType<Axis>;
