import { z } from 'zod';
import { HOLD_PHASES } from '../record/hold-phase.ts';
import { GUEST_DAYS } from './link-days.ts';
import { LINE_STATES, NamedStretch } from './report-views.ts';
import { CoveringFacts, Day, Id, Instant, MarkShape, StageShape, TrackShape, line } from './shapes.ts';

/** Whoever reads one covering or one member by a link, without an account. */

const GuestShows = z
  .union([z.strictObject({ covering: Id }), z.strictObject({ mark: MarkShape })])
  .meta({ description: 'The covering or the member that the guest may read, and nothing else.' });
export type GuestShows = z.infer<typeof GuestShows>;

export const GuestFacts = z.strictObject({
  shows: GuestShows,
  label: line(100).meta({ description: 'For whom the link is.' }),
});

export const GuestRequest = GuestFacts.extend({
  id: Id,
  days: z.number().int().min(1).max(GUEST_DAYS.most).default(GUEST_DAYS.usual),
});
export type GuestRequest = z.infer<typeof GuestRequest>;

export const GuestView = GuestFacts.extend({
  id: Id,
  name: z.string().meta({ description: 'Of the covering, or the mark of the member.' }),
  by: z.string().nullable().meta({ description: 'Who made the link.' }),
  admittedAt: Instant,
  until: Instant,
  lastUsedAt: Instant.nullable(),
  opensHere: z.boolean().meta({
    description: 'false in a house restored from an archive, which holds no secrets: make a new link.',
  }),
}).meta({ id: 'Guest' });
export type GuestView = z.infer<typeof GuestView>;

const GuestPictureView = z.object({
  tag: Id,
  photo: Id,
  stage: StageShape,
  instant: Instant.nullable().meta({ description: 'null: nobody knows when it was taken.' }),
});
export type GuestPictureView = z.infer<typeof GuestPictureView>;

const named = { name: z.string(), kind: CoveringFacts.shape.kind, plannedDay: Day.nullable() };

const GuestCoveringView = z.object({
  ...named,
  shows: z.literal('covering'),
  standing: z
    .object({
      phase: z.enum(HOLD_PHASES),
      without: z.string().nullable().meta({ description: 'Why it closed without a release.' }),
      takenBack: z.object({ at: Instant, reason: z.string() }).nullable(),
    })
    .meta({ description: 'Where it stands with its inspection; nobody is named.' }),
  closedAt: Instant.nullable(),
  counts: z.object({ hidden: z.int(), onRecord: z.int(), gaps: z.int(), lost: z.int(), waived: z.int() }),
  lines: z.array(
    z.object({
      mark: MarkShape,
      kind: z.string(),
      place: z.string(),
      least: StageShape,
      state: z.enum(LINE_STATES),
      waiver: z
        .object({ at: Instant, reason: z.string(), isTakenBack: z.boolean() })
        .nullable()
        .meta({ description: 'Why a release accepts that it has no record, or did.' }),
      missing: z.array(NamedStretch).meta({ description: 'Parts without a record; empty: all or nothing.' }),
      pictures: z.array(GuestPictureView).meta({ description: 'The best records, each photo once.' }),
    }),
  ),
});
export type GuestCoveringView = z.infer<typeof GuestCoveringView>;

const GuestMemberView = z.object({
  shows: z.literal('member'),
  mark: MarkShape,
  kind: z.string(),
  place: z.string(),
  retired: z.boolean(),
  track: TrackShape,
  stages: z.array(
    z.object({
      stage: StageShape,
      after: z.object({ instant: Instant }).nullable().meta({ description: 'The latest photo before it.' }),
      by: z.object({ instant: Instant, stage: StageShape }).nullable().meta({
        description: 'The earliest photo at this stage or past it.',
      }),
      contradicted: z.boolean(),
      pictures: z.array(GuestPictureView),
    }),
  ),
  coverings: z.array(z.object({ ...named, closedAt: Instant.nullable() })),
});
export type GuestMemberView = z.infer<typeof GuestMemberView>;

export const GuestPageView = z
  .object({
    house: z.string(),
    zone: z.string(),
    label: z.string(),
    until: Instant,
    page: z.discriminatedUnion('shows', [GuestCoveringView, GuestMemberView]),
  })
  .meta({ id: 'GuestPage' });
export type GuestPageView = z.infer<typeof GuestPageView>;
