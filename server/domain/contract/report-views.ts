import { z } from 'zod';
import { CAPTURE_DOUBTS } from '../photo/capture-doubts.ts';
import { DATED_BY } from './clock.ts';
import { FindingKindShape } from './findings.ts';
import { StretchShape } from './frame-shapes.ts';
import { VerdictShape } from './legibility-views.ts';
import { CoveringFacts, Day, Id, Instant, MarkShape, StageShape } from './shapes.ts';

/**
 * Why a tag does not count for a requirement; 'no-photo' where there is no tag at all. 'part-only' and
 * 'too-few-views' are said of a record that counts, and is not enough.
 */
export const MISS_REASONS = [
  'no-photo',
  'other-stretch',
  'before-stage',
  'shows-the-covering',
  'after-closing',
  'perhaps-after-closing',
  'undated',
  ...CAPTURE_DOUBTS,
  'contradicted',
  'unreadable',
  'part-only',
  'too-few-views',
] as const;
export type MissReason = (typeof MISS_REASONS)[number];

const TagFindingView = z.object({
  kind: FindingKindShape,
  accepted: z
    .object({ by: z.string().nullable(), reason: z.string() })
    .nullable()
    .meta({ description: 'Who has answered for what it says today, by name, and why.' }),
});

export const EvidenceView = z.object({
  tag: Id,
  photo: Id,
  stage: StageShape,
  instant: Instant.nullable(),
  uncertaintyS: z.number().min(0),
  datedBy: z.enum(DATED_BY).nullable(),
  legibility: VerdictShape,
  findings: z.array(TagFindingView).meta({
    description: 'What is to be looked at about this tag, in the order in which kinds are shown.',
  }),
});

/** A part of a member in mm from its start, with the lines of the grid that it lies between. */
export const NamedStretch = StretchShape.extend({
  fromMark: z.string().nullable(),
  toMark: z.string().nullable(),
});
export type NamedStretch = z.infer<typeof NamedStretch>;

export const ReportLineView = z.object({
  mark: MarkShape,
  kind: z.string(),
  place: z.string(),
  least: StageShape,
  views: z.int().meta({ description: 'Photos that must show each part of it.' }),
  state: z.enum(['on-record', 'gap', 'lost', 'retired']),
  hidden: NamedStretch.nullable().meta({ description: 'What of it is hidden; null: all of it.' }),
  missing: z.array(NamedStretch).meta({
    description: 'The parts of what is hidden that have no record; empty where it is missing whole.',
  }),
  lengthMm: z.number().nullable().meta({ description: 'Of what is hidden; null where nobody knows.' }),
  completeAt: Instant.nullable().meta({
    description: 'When the photo was taken with which nothing was missing any more.',
  }),
  records: z.array(EvidenceView),
  nearestMiss: z
    .object({ reasons: z.array(z.enum(MISS_REASONS)).min(1), tag: EvidenceView.nullable() })
    .nullable(),
});

const CountsShape = z.object({
  hidden: z.int(),
  onRecord: z.int(),
  firm: z.int().meta({ description: 'Of those on record: with a record against which nothing speaks.' }),
  gaps: z.int(),
  lost: z.int(),
  retired: z.int(),
});

export const ReportCoveringView = z.object({
  id: Id,
  name: z.string(),
  kind: CoveringFacts.shape.kind,
  plannedDay: Day.nullable(),
  closedAt: Instant.nullable(),
  daysLeft: z.int().nullable().meta({
    description: 'To the planned day; negative when it has passed; null when closed or without a day.',
  }),
  counts: CountsShape,
  lines: z.array(ReportLineView),
});

export const ClosingReportView = z
  .object({
    asOf: Instant,
    today: Day,
    days: z.array(z.object({ day: Day.nullable(), coverings: z.array(ReportCoveringView) })).meta({
      description: 'By closing day, actual before planned; coverings without a day last (day: null).',
    }),
    counts: CountsShape,
    unhidden: z.int().meta({ description: 'Standing members that no covering names.' }),
  })
  .meta({ id: 'ClosingReport' });
export type ClosingReportView = z.infer<typeof ClosingReportView>;

export const ReportOfPhotoView = z
  .object({
    today: Day,
    coverings: z.array(z.object({ id: Id, lines: z.array(ReportLineView) })).meta({
      description: 'Of each covering the lines of members that were ever tagged on the photo.',
    }),
  })
  .meta({ id: 'ReportOfPhoto' });
export type ReportOfPhotoView = z.infer<typeof ReportOfPhotoView>;
