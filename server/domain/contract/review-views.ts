import { z } from 'zod';
import { CaptureShape } from './capture.ts';
import { Lacking, ReleasedMember, ReleaseFacts, Standing, TakenBackView, Waiver } from './hold.ts';
import { NamedStretch, ReportLineView } from './report-views.ts';
import { CoveringKindShape, Day, Id, Instant, MarkShape, PersonShape, RoleShape, Sha256 } from './shapes.ts';
import { CoveringView, TagView } from './views.ts';

/** A tag as evidence: with its photo's name and time, and the address of what it shows. */
export const EvidenceTagView = z.object({
  tag: TagView,
  fileName: z.string(),
  capture: CaptureShape,
  crop: z.string().meta({ description: 'Address of the crop.' }),
});
export type EvidenceTagView = z.infer<typeof EvidenceTagView>;

export const ReviewLineView = ReportLineView.extend({
  basis: Sha256.meta({
    description: 'Of all that speaks for and against it: another one is to be looked at anew.',
  }),
  whole: z.boolean().meta({ description: 'All of the member is hidden.' }),
  own: z.boolean().meta({ description: 'Whoever asks has alone recorded it, or a part of it.' }),
});
export type ReviewLineView = z.infer<typeof ReviewLineView>;

const said = { at: Instant, by: PersonShape.nullable() };

/** Why a covering could not close the last time that somebody reviewed it. */
export const LastRefusalView = z.object({
  ...said,
  note: z.string(),
  takenBack: z.boolean().meta({ description: 'It had been released, and the release was taken back.' }),
  lacking: z.array(
    Lacking.extend({
      saidSince: z.boolean().meta({ description: 'Something was said since of its tags or their photos.' }),
    }),
  ),
});
export type LastRefusalView = z.infer<typeof LastRefusalView>;

export const ReviewView = z
  .object({
    covering: CoveringView.omit({ hides: true }),
    today: Day,
    standing: Standing,
    fourEyes: z.boolean(),
    ownReady: z.boolean().meta({ description: 'Whoever asks has said that it is ready.' }),
    lastRefusal: LastRefusalView.nullable().meta({ description: 'Null once it is released or closed.' }),
    lastWaived: z
      .object({ ...said, waived: z.array(Waiver) })
      .nullable()
      .meta({
        description: 'What the last release, which does not stand any more, accepted without a record.',
      }),
    lines: z.array(ReviewLineView),
    evidence: z.array(EvidenceTagView).meta({
      description: 'Every tag that is named in the lines, as a record or as the nearest miss.',
    }),
  })
  .meta({ id: 'Review' });
export type ReviewView = z.infer<typeof ReviewView>;

/** What has become of one member of a release since. */
export const ReleaseChangeView = z.object({
  mark: MarkShape,
  what: z.enum(['hidden-since', 'more-hidden', 'hidden-no-more', 'records']).meta({
    description:
      'hidden-since: not in the release; more-hidden: more of it than in the release; ' +
      'hidden-no-more: the covering hides it no more; records: other tags count.',
  }),
  gone: z.array(Id).meta({ description: 'Tags that the release rests on and that count no more.' }),
  come: z.array(Id).meta({ description: 'Tags that count now and are not in the release.' }),
});
export type ReleaseChangeView = z.infer<typeof ReleaseChangeView>;

/** A released member whose parts are named by the grid as it was stated then. */
export const ReleasedMemberView = ReleasedMember.extend({
  kind: z.string().nullable().meta({ description: 'As the schedule has it now; null: it has it no more.' }),
  stretch: NamedStretch.nullable().meta({ description: 'What of it is hidden; null: all of it.' }),
  missing: z.array(NamedStretch).meta({ description: 'Of a waiver: the parts; empty: all of it.' }),
  isWhole: z.boolean().meta({ description: 'All of it is hidden, as long as it was then.' }),
  isUpright: z.boolean().meta({ description: 'Its start is its foot.' }),
});
export type ReleasedMemberView = z.infer<typeof ReleasedMemberView>;

/** What was said, before a release, of a tag that it rests on. */
export const TagDoubtView = z.object({
  tag: Id,
  what: z.enum(['doubted', 'answered', 'reopened']).meta({
    description: 'reopened: the answer was taken back, and the doubt stood again.',
  }),
  at: Instant,
  by: PersonShape.nullable(),
  reason: z.string(),
});
export type TagDoubtView = z.infer<typeof TagDoubtView>;

export const ReleaseView = z
  .object({
    ...ReleaseFacts.omit({ release: true, covering: true }).shape,
    hides: z.array(ReleasedMemberView),
    id: Id,
    seq: z.int().meta({ description: 'Its entry in the ledger.' }),
    headAfter: Sha256.meta({ description: 'The tree head with that entry as the last.' }),
    at: Instant,
    by: PersonShape.nullable(),
    covering: z.object({
      id: Id,
      name: z.string(),
      kind: CoveringKindShape,
      closedAt: Instant.nullable(),
      closedUnder: Id.nullable().meta({
        description: 'The release that it closed under; null where it is open, or closed without one.',
      }),
    }),
    house: z.object({ id: Id, name: z.string(), zone: z.string() }),
    withdrawn: TakenBackView.nullable(),
    ended: z.object(said).nullable().meta({
      description:
        'Who said while it stood that the covering is ready anew: it was outrun, and ended with that.',
    }),
    evidence: z.array(EvidenceTagView).meta({
      description: 'The tags that it rests on, as they were said, and those that have come since.',
    }),
    refusals: z
      .array(z.object({ ...said, note: z.string(), lacking: z.array(Lacking) }))
      .meta({ description: 'What had been found missing of the covering before, in order.' }),
    doubts: z.array(TagDoubtView).meta({
      description: 'What had been said against its tags and for them when it was given, in order.',
    }),
    roles: z.array(z.object({ person: PersonShape, role: RoleShape.nullable(), since: Instant })).meta({
      description: 'Who had which role from when; null: none any more. In order.',
    }),
    beyond: z.array(MarkShape).meta({
      description:
        'Of which it does not hold any more as they stand now; once it was taken back or ended, none.',
    }),
    doubtsSince: z.array(TagDoubtView.omit({ tag: true }).extend({ mark: MarkShape })).meta({
      description: 'What was said against tags of its members and for them since, in order.',
    }),
    since: z.array(ReleaseChangeView).meta({
      description: 'What is otherwise now. It does not alter the release.',
    }),
  })
  .meta({ id: 'Release' });
export type ReleaseView = z.infer<typeof ReleaseView>;
