import { z } from 'zod';
import { AXIS_PROBLEMS } from '../frame/set-out.ts';
import { LINE_STATES } from './report-views.ts';
import { AxisShape, GridShape, StretchShape, ZoneShape } from './frame-shapes.ts';
import { CoveringFacts, Day, Id, MarkShape, StageShape, TrackShape } from './shapes.ts';

/** The whole frame of a house, as it is drawn on any day. */

export const FrameMemberView = z.object({
  mark: MarkShape,
  kind: z.string(),
  name: z.string(),
  place: z.string(),
  retired: z.boolean(),
  track: TrackShape,
  axis: AxisShape.nullable().meta({
    description: 'null: the schedule does not say where it lies, or says what cannot be.',
  }),
  problem: z
    .object({ reason: z.enum(AXIS_PROBLEMS), field: z.string() })
    .nullable()
    .meta({ description: 'Why what the schedule says of its place cannot be used.' }),
  seen: z.array(z.object({ day: Day, stage: StageShape })).meta({
    description: 'The furthest stage on any photo by then, at each day on which that changed; ascending.',
  }),
});
export type FrameMemberView = z.infer<typeof FrameMemberView>;

export const FrameHiddenView = z.object({
  mark: MarkShape,
  least: StageShape,
  stretches: z
    .array(StretchShape)
    .nullable()
    .meta({ description: 'null: the whole member, which has no axis.' }),
  missing: z.array(StretchShape).nullable().meta({
    description:
      'What of it has no record today; empty where all has; null where it is the whole member without axis.',
  }),
  state: z.enum(LINE_STATES),
  hiddenDay: Day.nullable().meta({
    description: 'The day from which no face of it is open; null while one is.',
  }),
  onRecordSince: Day.nullable().meta({
    description: 'The day of the photo that completed its record; null where it is not complete.',
  }),
  waivedDay: Day.nullable().meta({
    description: 'The day of the release that accepts what is missing; null where none does.',
  }),
});
export type FrameHiddenView = z.infer<typeof FrameHiddenView>;

export const FrameCoveringView = z.object({
  id: Id,
  name: z.string(),
  kind: CoveringFacts.shape.kind,
  zone: ZoneShape.nullable().meta({ description: 'null: it only lists its members.' }),
  plannedDay: Day.nullable(),
  closedDay: Day.nullable(),
  hides: z.array(FrameHiddenView),
});
export type FrameCoveringView = z.infer<typeof FrameCoveringView>;

export const FrameProtectionView = z.object({
  id: Id,
  name: z.string(),
  laidDay: Day,
  liftedDay: Day.nullable().meta({ description: 'null: it still lies.' }),
  hides: z.array(
    z.object({
      mark: MarkShape,
      stretch: StretchShape.nullable().meta({ description: 'null: the whole member.' }),
    }),
  ),
});
export type FrameProtectionView = z.infer<typeof FrameProtectionView>;

export const FrameView = z
  .object({
    today: Day,
    grid: GridShape.nullable(),
    members: z.array(FrameMemberView),
    coverings: z.array(FrameCoveringView),
    protections: z.array(FrameProtectionView),
  })
  .meta({ id: 'Frame' });
export type FrameView = z.infer<typeof FrameView>;

export const FrameOfPhotoView = z
  .object({
    today: Day,
    members: z.array(FrameMemberView).meta({
      description: 'The members that were ever tagged on the photo.',
    }),
    coverings: z.array(FrameCoveringView.pick({ id: true, hides: true })),
  })
  .meta({ id: 'FrameOfPhoto' });
export type FrameOfPhotoView = z.infer<typeof FrameOfPhotoView>;
