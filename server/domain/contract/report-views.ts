import { z } from 'zod';
import { CAPTURE_DOUBTS } from '../photo/capture-doubts.ts';
import { DATED_BY } from './clock.ts';
import { FindingKindShape } from './findings.ts';
import { StretchShape } from './frame-shapes.ts';
import { Standing, TakenBackView } from './hold.ts';
import { VerdictShape } from './legibility-views.ts';
import { CoveringFacts, Day, Id, Instant, MarkShape, PersonShape, StageShape } from './shapes.ts';

/**
 * Why a tag does not count for a requirement; 'no-photo' where there is no tag at all. 'part-only' and
 * 'too-few-views' are said of a record that counts, and is not enough.
 */
export const MISS_REASONS = [
  'no-photo',
  'other-stretch',
  'before-stage',
  'shows-the-covering',
  'under-protection',
  'perhaps-under-protection',
  'after-closing',
  'perhaps-after-closing',
  'undated',
  ...CAPTURE_DOUBTS,
  'disputed',
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
  doubt: z
    .object({ by: z.string(), reason: z.string() })
    .optional()
    .meta({ description: 'Of a doubt: whose it is, and why.' }),
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

export const LINE_STATES = ['on-record', 'gap', 'lost', 'waived', 'hidden-before', 'retired'] as const;

/** Whose word it is that a member may go without a record. */
export const WaiverView = z.object({
  release: Id,
  at: Instant,
  by: PersonShape.nullable(),
  reason: z.string(),
  takenBack: TakenBackView.nullable().meta({
    description: 'Of a release that was taken back after the closing: it accepts nothing any more.',
  }),
});
export type WaiverView = z.infer<typeof WaiverView>;

export const ReportLineView = z.object({
  mark: MarkShape,
  kind: z.string(),
  place: z.string(),
  least: StageShape,
  views: z.int().meta({ description: 'Photos that must show each part of it.' }),
  state: z.enum(LINE_STATES).meta({
    description:
      'gap: no record yet, and it can still be photographed; lost: no face of it is open any more; ' +
      'waived: one of these, which the release that stands accepts; ' +
      'hidden-before: without a record, and an earlier layer had hidden it, where it is asked for.',
  }),
  hidden: NamedStretch.nullable().meta({ description: 'What of it is hidden; null: all of it.' }),
  missing: z.array(NamedStretch).meta({
    description: 'The parts of what is hidden that have no record; empty where it is missing whole.',
  }),
  lostBefore: z.array(NamedStretch).meta({
    description:
      'The parts without a record that an earlier layer had hidden, where that is not all of it; not missing here.',
  }),
  lengthMm: z.number().nullable().meta({ description: 'Of what is hidden; null where nobody knows.' }),
  completeAt: Instant.nullable().meta({
    description: 'When the photo was taken with which nothing was missing any more.',
  }),
  records: z.array(EvidenceView),
  nearestMiss: z
    .object({ reasons: z.array(z.enum(MISS_REASONS)).min(1), tag: EvidenceView.nullable() })
    .nullable(),
  hiddenAt: Instant.nullable().meta({
    description: 'From when no face of it is open, by whatever closing; null while one is.',
  }),
  before: z
    .object({ covering: Id, name: z.string() })
    .nullable()
    .meta({ description: 'The earlier layer with which all of it was hidden.' }),
  otherFace: z
    .object({
      towards: z.string().nullable().meta({
        description: 'The next line on that side; null: nothing stands beyond it.',
      }),
      closedAt: Instant.nullable().meta({ description: 'null: it can still be photographed from there.' }),
      plannedDay: Day.nullable(),
    })
    .nullable()
    .meta({ description: 'Of a wall that is covered on one face: the other face, where this is hidden.' }),
  waiver: WaiverView.nullable().meta({ description: 'Who accepted that it has no record, or had, and why.' }),
  liesUnder: z.object({ id: Id, name: z.string(), since: Instant }).nullable().meta({
    description: 'Of a gap: the temporary protection that lies over what is missing today.',
  }),
});

const CountsShape = z.object({
  hidden: z.int(),
  onRecord: z.int(),
  firm: z.int().meta({ description: 'Of those on record: with a record against which nothing speaks.' }),
  gaps: z.int(),
  lost: z.int(),
  waived: z.int().meta({ description: 'Without a record, which the release that stands accepts.' }),
  before: z.int().meta({ description: 'Without a record, and hidden by an earlier layer; not in `hidden`.' }),
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
  standing: Standing,
  counts: CountsShape,
  layers: z.array(Id).meta({
    description: 'Other coverings at the same place, whatever their face, in the order of their days.',
  }),
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
