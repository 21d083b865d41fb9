import { z } from 'zod';
import { HOLD_PHASES } from '../record/hold-phase.ts';
import { HoldView, TakenBackView } from './hold.ts';
import { LENGTH_UNITS } from '../frame/length.ts';
import { CaptureShape } from './capture.ts';
import { ShownStretch, StretchShape } from './frame-shapes.ts';
import { PlaceShape } from './place.ts';
import { ProtectionView } from './protection.ts';
import { BurstView, LegibilityView } from './legibility-views.ts';
import { WaiverView } from './report-views.ts';
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
  fourEyes: z.boolean().meta({ description: 'Whether nobody may release what they alone recorded.' }),
  unit: z.enum(LENGTH_UNITS).meta({ description: 'In which its lengths are typed; stated with the grid.' }),
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
    stretch: ShownStretch.nullable(),
    note: z.string(),
    by: PersonShape.nullable(),
    at: Instant,
    supersedes: Id.nullable(),
    state: z.enum(['standing', 'superseded', 'withdrawn']),
    ended: z.object({ at: Instant, by: PersonShape.nullable(), reason: z.string() }).nullable(),
    disputed: z
      .object({ at: Instant, by: PersonShape.nullable(), reason: z.string() })
      .nullable()
      .meta({ description: 'Who doubted it last; the finding says whether that was answered.' }),
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

/** A member under a covering; computed from its zone, or listed by hand. */
export const HiddenView = z.object({
  mark: MarkShape,
  least: StageShape,
  views: z.int().meta({ description: 'Photos that must show each part of it.' }),
  stretch: StretchShape.nullable().meta({ description: 'What of it is hidden; null: all of it.' }),
  byZone: z.boolean(),
});
export type HiddenView = z.infer<typeof HiddenView>;

export const CoveringView = CoveringFacts.extend({
  id: Id,
  hides: z.array(HiddenView),
  hold: HoldView,
  closed: z
    .object({
      at: Instant,
      by: PersonShape.nullable(),
      note: z.string(),
      release: Id.nullable().meta({ description: 'The release that it closed under.' }),
      without: z
        .string()
        .nullable()
        .meta({ description: 'Why it closed without one, where somebody said so.' }),
      takenBack: TakenBackView.nullable().meta({ description: 'The release that it closed under, since.' }),
    })
    .nullable(),
  changedAt: Instant,
}).meta({ id: 'Covering' });
export type CoveringView = z.infer<typeof CoveringView>;

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

export const ArchiveSizeView = z
  .object({
    entries: z.int(),
    originals: z.int(),
    bytes: z.int().meta({ description: 'Of originals and ledger; the rest is small.' }),
  })
  .meta({ id: 'ArchiveSize' });
export type ArchiveSizeView = z.infer<typeof ArchiveSizeView>;

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
    coverings: z.array(
      CoveringView.omit({ hides: true }).extend({
        least: StageShape,
        waiver: WaiverView.nullable().meta({
          description: 'Who accepted with the release that stands that it has no record, and why.',
        }),
        hiddenAt: Instant.nullable().meta({
          description: 'From when no face of what it hides is open, by whatever closing; null while one is.',
        }),
      }),
    ),
    protections: z.array(
      ProtectionView.pick({ id: true, name: true, what: true, laidAt: true, lifted: true }).extend({
        stretch: StretchShape.nullable().meta({ description: 'What of it lay under it; null: all of it.' }),
      }),
    ),
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
    closings: z.array(
      z.object({
        ...{ id: Id, name: z.string(), closed: z.boolean() },
        phase: z.enum(HOLD_PHASES).meta({ description: 'Where it stands with its inspection.' }),
      }),
    ),
  })
  .meta({ id: 'DayPage' });
export type DayView = z.infer<typeof DayView>;

export const DaySummaryView = z
  .object({ day: Day, photos: z.int(), tags: z.int(), statements: z.int(), notes: z.int() })
  .meta({ id: 'DaySummary' });
export type DaySummaryView = z.infer<typeof DaySummaryView>;

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

export const SessionView = z
  .object({
    id: z.string(),
    createdAt: Instant,
    seenAt: Instant.meta({ description: 'To the day.' }),
    userAgent: z.string().nullable(),
    here: z.boolean().meta({ description: 'The one that asks.' }),
  })
  .meta({ id: 'Session' });
export type SessionView = z.infer<typeof SessionView>;

export const InvitedView = z
  .object({
    id: Id,
    email: z.string(),
    role: RoleShape,
    by: z.string().nullable().meta({ description: 'In whose name the role is given.' }),
    until: Instant.meta({ description: 'The one-time link can be used until then.' }),
  })
  .meta({ id: 'Invited' });
export type InvitedView = z.infer<typeof InvitedView>;

export const LinkView = z
  .object({
    purpose: z.enum(['first-account', 'join-house', 'new-password']),
    email: z.string().nullable(),
    house: z.string().nullable(),
    role: RoleShape.nullable(),
    by: z.string().nullable().meta({ description: 'Who made it; null: whoever runs the program.' }),
    until: Instant,
  })
  .meta({ id: 'AccountLink' });
export type LinkView = z.infer<typeof LinkView>;
