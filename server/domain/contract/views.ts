import { z } from 'zod';
import { CAPTURE_DOUBTS } from '../photo/capture-doubts.ts';
import { CaptureShape } from './capture.ts';
import { PlaceShape } from './place.ts';
import { DATED_BY } from './clock.ts';
import { BurstView, LegibilityView, VerdictShape } from './legibility-views.ts';
import { ProblemShape } from './problems.ts';
import { DERIVATIVE_STATES } from './small-photo.ts';
import {
  CoveringFacts,
  Day,
  HouseFacts,
  Id,
  Instant,
  MarkShape,
  MemberFacts,
  PersonShape,
  PhotoFacts,
  RegionShape,
  RoleShape,
  Sha256,
  StageShape,
  TrackShape,
} from './shapes.ts';

/** What the server answers: one shape a noun. */

export const AccountView = PersonShape.extend({ email: z.string(), keeper: z.boolean() }).meta({
  id: 'Account',
});
export type AccountView = z.infer<typeof AccountView>;

export const HouseView = HouseFacts.extend({
  id: Id,
  createdAt: Instant,
  role: RoleShape,
  counts: z.object({ members: z.int(), photos: z.int(), tags: z.int(), coverings: z.int() }),
}).meta({ id: 'House' });
export type HouseView = z.infer<typeof HouseView>;

export const PersonInHouseView = PersonShape.extend({ role: RoleShape, email: z.string().nullable() }).meta({
  id: 'PersonInHouse',
});
export type PersonInHouseView = z.infer<typeof PersonInHouseView>;

export const MemberView = MemberFacts.extend({
  track: TrackShape.meta({
    description: 'The stages that this member passes, from the schedule or from its kind.',
  }),
  statedTrack: TrackShape.nullable(),
  retired: z.boolean(),
  stage: StageShape.nullable().meta({
    description: 'The furthest stage on any photo whose date nothing contradicts.',
  }),
  tags: z.int(),
  photos: z.int(),
}).meta({ id: 'Member' });
export type MemberView = z.infer<typeof MemberView>;

export const PhotoView = PhotoFacts.extend({
  id: Id,
  house: Id,
  addedAt: Instant,
  addedBy: PersonShape.nullable(),
  capture: CaptureShape,
  place: PlaceShape,
  pictures: z.enum(DERIVATIVE_STATES).meta({
    description: 'Thumbnail and preview: not made yet, made, made from a damaged file, cannot be made.',
  }),
  tags: z.int().meta({ description: 'Tags that stand.' }),
  alike: z.object({
    burst: BurstView.nullable().meta({ description: 'Taken in one go and nearly the same.' }),
  }),
}).meta({ id: 'Photo' });
export type PhotoView = z.infer<typeof PhotoView>;

export const TagView = z
  .object({
    id: Id,
    photo: Id,
    mark: MarkShape,
    known: z.boolean().meta({ description: 'Whether the schedule has this mark.' }),
    stage: StageShape,
    region: RegionShape,
    note: z.string(),
    by: PersonShape.nullable(),
    at: Instant,
    supersedes: Id.nullable(),
    state: z.enum(['standing', 'superseded', 'withdrawn']),
    ended: z.object({ at: Instant, by: PersonShape.nullable(), reason: z.string() }).nullable(),
    legibility: LegibilityView,
  })
  .meta({ id: 'Tag' });
export type TagView = z.infer<typeof TagView>;

/** What a plan of the site shows of one photo. */
export const PhotoPlaceView = z.object({
  id: Id,
  fileName: z.string(),
  day: Day.nullable(),
  capturedAt: Instant.nullable(),
  place: PlaceShape,
});
export type PhotoPlaceView = z.infer<typeof PhotoPlaceView>;

export const PhotoDetailView = PhotoView.extend({ allTags: z.array(TagView) }).meta({ id: 'PhotoDetail' });
export type PhotoDetailView = z.infer<typeof PhotoDetailView>;

export const UploadOutcome = z
  .discriminatedUnion('outcome', [
    z.object({ outcome: z.literal('added'), fileName: z.string(), photo: PhotoView }),
    z.object({ outcome: z.literal('already-here'), fileName: z.string(), photo: PhotoView }),
    z.object({ outcome: z.literal('refused'), fileName: z.string(), problem: ProblemShape }),
  ])
  .meta({ id: 'UploadOutcome' });
export type UploadOutcome = z.infer<typeof UploadOutcome>;

export const CoveringView = CoveringFacts.extend({
  id: Id,
  closed: z.object({ at: Instant, by: PersonShape.nullable(), note: z.string() }).nullable(),
  changedAt: Instant,
}).meta({ id: 'Covering' });
export type CoveringView = z.infer<typeof CoveringView>;

/** Why a tag does not count for a requirement; 'no-photo' where there is no tag at all. */
export const MISS_REASONS = [
  'no-photo',
  'before-stage',
  'shows-the-covering',
  'after-closing',
  'perhaps-after-closing',
  'undated',
  ...CAPTURE_DOUBTS,
  'contradicted',
  'unreadable',
] as const;
export type MissReason = (typeof MISS_REASONS)[number];

export const EvidenceView = z.object({
  tag: Id,
  photo: Id,
  stage: StageShape,
  instant: Instant.nullable(),
  uncertaintyS: z.number().min(0),
  datedBy: z.enum(DATED_BY).nullable(),
  legibility: VerdictShape,
});

export const ReportLineView = z.object({
  mark: MarkShape,
  kind: z.string(),
  place: z.string(),
  least: StageShape,
  state: z.enum(['on-record', 'gap', 'lost', 'retired']),
  records: z.array(EvidenceView),
  nearestMiss: z
    .object({ reasons: z.array(z.enum(MISS_REASONS)).min(1), tag: EvidenceView.nullable() })
    .nullable(),
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
  counts: z.object({ hidden: z.int(), onRecord: z.int(), gaps: z.int(), lost: z.int(), retired: z.int() }),
  lines: z.array(ReportLineView),
});

export const ClosingReportView = z
  .object({
    asOf: Instant,
    today: Day,
    days: z.array(z.object({ day: Day.nullable(), coverings: z.array(ReportCoveringView) })).meta({
      description: 'By closing day, actual before planned; coverings without a day last (day: null).',
    }),
    counts: z.object({ hidden: z.int(), onRecord: z.int(), gaps: z.int(), lost: z.int(), retired: z.int() }),
    unhidden: z.int().meta({ description: 'Standing members that no covering names.' }),
  })
  .meta({ id: 'ClosingReport' });
export type ClosingReportView = z.infer<typeof ClosingReportView>;

export const LedgerEntryView = z
  .object({
    seq: z.int(),
    at: Instant,
    by: PersonShape.nullable(),
    kind: z.string(),
    version: z.int(),
    payload: z.unknown(),
    leaf: Sha256,
    head: Sha256.meta({ description: 'RFC 6962 tree head over the entries 0 to this one.' }),
  })
  .meta({ id: 'LedgerEntry' });
export type LedgerEntryView = z.infer<typeof LedgerEntryView>;

const SightingBound = z.object({ instant: Instant, tag: Id, photo: Id, stage: StageShape });

export const MemberHistoryView = z
  .object({
    member: MemberView,
    stages: z.array(
      z.object({
        stage: StageShape,
        after: SightingBound.nullable().meta({
          description: 'The latest photo that shows the member before this stage.',
        }),
        by: SightingBound.nullable().meta({
          description: 'The earliest photo that shows it at this stage or past it: `stage` says which.',
        }),
        contradicted: z.boolean().meta({ description: 'A later photo shows an earlier stage.' }),
      }),
    ),
    sightings: z.array(
      z.object({
        tag: TagView,
        fileName: z.string(),
        capture: CaptureShape,
        crop: z.string().meta({ description: 'Address of the crop.' }),
      }),
    ),
    coverings: z.array(CoveringView.omit({ hides: true }).extend({ least: StageShape })),
    statements: z.array(LedgerEntryView),
  })
  .meta({ id: 'MemberHistory' });
export type MemberHistoryView = z.infer<typeof MemberHistoryView>;

export const NoteView = z.object({ by: PersonShape.nullable(), at: Instant, text: z.string() });

export const DayView = z
  .object({
    day: Day,
    photos: z.array(PhotoView).meta({ description: 'In order of capture.' }),
    changes: z.array(LedgerEntryView).meta({ description: 'What was said on this day.' }),
    notes: z.array(NoteView),
    closings: z.array(z.object({ id: Id, name: z.string(), closed: z.boolean() })),
  })
  .meta({ id: 'DayPage' });
export type DayView = z.infer<typeof DayView>;

export const DaySummaryView = z
  .object({ day: Day, photos: z.int(), tags: z.int(), statements: z.int(), notes: z.int() })
  .meta({ id: 'DaySummary' });
export type DaySummaryView = z.infer<typeof DaySummaryView>;

/** Fields of a member that a schedule column can fill. */
export const SCHEDULE_FIELDS = ['mark', 'kind', 'name', 'place', 'track', 'note'] as const;
export type ScheduleField = (typeof SCHEDULE_FIELDS)[number];

export const ROW_PROBLEMS = [
  'mark-missing',
  'mark-too-long',
  'mark-control-character',
  'mark-repeated',
  'value-too-long',
  'unknown-track',
] as const;

export const SchedulePreviewView = z
  .object({
    columns: z.array(
      z.object({
        index: z.int(),
        header: z.string(),
        field: z.enum(SCHEDULE_FIELDS).nullable().meta({ description: 'null: kept under its own name.' }),
      }),
    ),
    rows: z.int(),
    encoding: z.enum(['utf-8', 'shift_jis', 'utf-16le', 'utf-16be', 'xlsx']),
    sample: z.array(z.array(z.string())).meta({ description: 'The first rows as read.' }),
    problems: z.array(
      z.object({
        line: z.int().meta({ description: 'As a spreadsheet counts: the heading is line 1.' }),
        column: z.string(),
        value: z.string(),
        reason: z.enum(ROW_PROBLEMS),
        firstLine: z.int().nullable().meta({ description: 'For a repeated mark: where it stood first.' }),
      }),
    ),
    added: z.array(MemberFacts),
    changed: z.array(z.object({ before: MemberFacts, after: MemberFacts, returns: z.boolean() })),
    retired: z.array(z.object({ mark: MarkShape, tags: z.int() })),
    unchanged: z.int(),
    digest: Sha256.meta({ description: 'Send it as `agree` to import exactly what was shown.' }),
  })
  .meta({ id: 'SchedulePreview' });
export type SchedulePreviewView = z.infer<typeof SchedulePreviewView>;

export const ScheduleImportView = z
  .object({
    added: z.int(),
    changed: z.int(),
    retired: z.int(),
    unchanged: z.int(),
    badRows: z.int(),
    seq: z.int().nullable(),
  })
  .meta({ id: 'ScheduleImport' });
export type ScheduleImportView = z.infer<typeof ScheduleImportView>;

export const TokenView = z
  .object({
    id: Id,
    name: z.string(),
    createdAt: Instant,
    lastUsedAt: Instant.nullable(),
    expiresAt: Instant.nullable(),
  })
  .meta({ id: 'AccessToken' });
export type TokenView = z.infer<typeof TokenView>;

export const InvitedView = z
  .object({
    email: z.string(),
    role: RoleShape,
    until: Instant.meta({ description: 'The one-time link can be used until then.' }),
  })
  .meta({ id: 'Invited' });
export type InvitedView = z.infer<typeof InvitedView>;

export const LinkView = z
  .object({
    purpose: z.enum(['first-account', 'join-house']),
    email: z.string().nullable(),
    house: z.string().nullable(),
    role: RoleShape.nullable(),
  })
  .meta({ id: 'AccountLink' });
export type LinkView = z.infer<typeof LinkView>;

/** How much has been said of a house and how many pictures were finished: what is on screen is as old as this. */
export const HouseStateView = z.object({ size: z.int(), pictures: z.int() });
export type HouseStateView = z.infer<typeof HouseStateView>;

export const StatementEvent = z.object({
  type: z.literal('statement'),
  seq: z.int(),
  kind: z.string(),
  photo: Id.nullable(),
});
export type StatementEvent = z.infer<typeof StatementEvent>;

/** What travels over the event stream of a house; 'here' first, and again every few seconds. */
export const HouseEvent = z
  .discriminatedUnion('type', [
    HouseStateView.extend({ type: z.literal('here') }),
    StatementEvent,
    z.object({
      type: z.literal('pictures'),
      photo: Id,
      pictures: z.enum(DERIVATIVE_STATES),
      made: z.int().meta({ description: 'How many have been finished in this house.' }),
    }),
    z.object({
      type: z.literal('legibility'),
      photo: Id,
      made: z.int().meta({ description: 'Counted together with the pictures.' }),
    }),
  ])
  .meta({ id: 'HouseEvent' });
export type HouseEvent = z.infer<typeof HouseEvent>;
