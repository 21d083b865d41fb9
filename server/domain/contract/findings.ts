import { z } from 'zod';
import { FINDING_KINDS } from '../record/findings/kinds.ts';
import { SmallPhotoView } from './small-photo.ts';
import { Id, Instant, MarkShape, PersonShape, Sha256, StageShape } from './shapes.ts';

export const FindingKindShape = z.enum(FINDING_KINDS);

/** Names a finding as long as it is about the same things. */
export const FindingKey = z.string().min(3).max(1000);

/** What a finding is about, and what an answer to it is about. */
export const FindingSubjects = {
  photos: z.array(Id).max(20_000),
  marks: z.array(MarkShape).max(20_000),
  covering: Id.nullable(),
};

export const FindingView = z
  .object({
    key: FindingKey,
    kind: FindingKindShape,
    basis: Sha256.meta({ description: 'Of all that it says: another one is another state of affairs.' }),
    ...FindingSubjects,
    tags: z.array(z.object({ tag: Id, photo: Id, mark: MarkShape, stage: StageShape })),
    facts: z.record(z.string(), z.union([z.string(), z.number()])).meta({
      description: 'The plain values that a sentence needs.',
    }),
    shown: z.array(SmallPhotoView).meta({ description: 'The first of its photos.' }),
    taggedBy: PersonShape.nullable().meta({
      description:
        'Of a doubt: who said the tag; with two people behind every release, somebody else answers.',
    }),
    stops: z.boolean().meta({ description: 'Its tags count as no record until somebody answers it.' }),
    answer: z
      .object({
        at: Instant,
        by: PersonShape.nullable(),
        reason: z.string(),
        stands: z.boolean().meta({ description: 'false: what it rests on has changed since.' }),
      })
      .nullable(),
  })
  .meta({ id: 'Finding' });
export type FindingView = z.infer<typeof FindingView>;

export const FINDING_STATES = ['open', 'accepted'] as const;

export const FindingsView = z
  .object({
    counts: z.array(z.object({ kind: FindingKindShape, open: z.int(), accepted: z.int() })).meta({
      description:
        'Of the whole house, in the order in which kinds are shown; kinds without any are left out.',
    }),
    findings: z.array(FindingView).meta({ description: 'By kind, the latest photo first.' }),
    next: z.int().nullable().meta({ description: 'Send it as `offset` for those after these.' }),
  })
  .meta({ id: 'Findings' });
export type FindingsView = z.infer<typeof FindingsView>;
