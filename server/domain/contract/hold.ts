import { z } from 'zod';
import { HOLD_PHASES, HOLD_STATES } from '../record/hold-phase.ts';
import { StretchShape } from './frame-shapes.ts';
import { Id, Instant, MarkShape, PersonShape, Sha256, StageShape, line, paragraph } from './shapes.ts';

const reason = line(1000);

/** A member that keeps a covering from being released. */
export const Lacking = z.strictObject({ mark: MarkShape, note: paragraph(500).default('') });
export type Lacking = z.infer<typeof Lacking>;

export const HoldView = z.object({
  state: z.enum(HOLD_STATES).meta({
    description: 'ready: for inspection; refused: with what is missing; released: it may close.',
  }),
  said: z
    .object({ at: Instant, by: PersonShape.nullable(), note: z.string() })
    .nullable()
    .meta({ description: 'By whom and when it was brought into this state; null while it is only planned.' }),
  lacking: z.array(Lacking).meta({ description: 'Of a refusal.' }),
  release: Id.nullable().meta({ description: 'The release that stands.' }),
});
export type HoldView = z.infer<typeof HoldView>;

/** Who took a release back, when and why. */
export const TakenBackView = z.object({ at: Instant, by: PersonShape.nullable(), reason: z.string() });
export type TakenBackView = z.infer<typeof TakenBackView>;

/** Where a covering stands with its inspection, by what is on record now. */
export const Standing = z.object({
  phase: z.enum(HOLD_PHASES).meta({
    description:
      'outrun: released, but not for all that is hidden and missing now; under-release, under-taken-back, ' +
      'without-release: how it closed; under-taken-back: the release was taken back after that.',
  }),
  beyond: z
    .array(MarkShape)
    .meta({ description: 'Of an outrun release: the members that it does not cover.' }),
  without: z.string().nullable().meta({ description: 'Why it closed without a release.' }),
  takenBack: TakenBackView.nullable(),
});
export type Standing = z.infer<typeof Standing>;

/** How a hidden member was found when a covering was released. */
export const RELEASED_AS = ['on-record', 'waived', 'hidden-before'] as const;

/** One hidden member as it was when the covering was released, with the tags that counted. */
export const ReleasedMember = z.strictObject({
  mark: MarkShape,
  least: StageShape,
  views: z.int().min(1),
  stretch: StretchShape.nullable().meta({ description: 'What of it is hidden; null: all of it.' }),
  state: z.enum(RELEASED_AS),
  missing: z.array(StretchShape).meta({ description: 'Of a waiver: the parts; empty: all of it.' }),
  tags: z.array(Id).max(20_000),
});
export type ReleasedMember = z.infer<typeof ReleasedMember>;

export const Waiver = z.strictObject({ mark: MarkShape, reason });

/** The inspector's word that a covering may close, with all that it rests on. */
export const ReleaseFacts = z.strictObject({
  release: Id,
  covering: Id,
  head: z
    .strictObject({ size: z.int().min(0), hash: Sha256 })
    .meta({ description: 'Of the ledger before this entry: all that the release rests on lies under it.' }),
  fourEyes: z.boolean().meta({ description: 'Whether nobody could release what they alone recorded.' }),
  hides: z.array(ReleasedMember).max(20_000),
  waived: z.array(Waiver).max(20_000),
  note: paragraph(2000),
});
export type ReleaseFacts = z.infer<typeof ReleaseFacts>;

/** What somebody has looked at and says of it: that it may go, or why it may although it has no record. */
export const Reviewed = z.strictObject({
  mark: MarkShape,
  basis: Sha256.meta({ description: 'As it stood in the review that was looked at.' }),
  waived: reason.nullable().default(null).meta({ description: 'Why it may go without a record.' }),
});
export type Reviewed = z.infer<typeof Reviewed>;

export const ReleaseRequest = z.strictObject({
  id: Id,
  members: z.array(Reviewed).max(20_000),
  note: paragraph(2000).default(''),
});
export type ReleaseRequest = z.infer<typeof ReleaseRequest>;

export const RefusalRequest = z
  .strictObject({ lacking: z.array(Lacking).max(20_000), note: paragraph(2000).default('') })
  .refine(({ lacking, note }) => lacking.length > 0 || note.trim() !== '', {
    message: 'Name what is missing, or say it in the note.',
  });
export type RefusalRequest = z.infer<typeof RefusalRequest>;
