import type { Entry, StatementKind } from '#domain/ledger/statements';
import { memberSubject, subjectsOf } from '#domain/ledger/subjects';
import type { Tx } from '../tx.ts';
import { projectClock } from './clock.ts';
import { projectCovering } from './covering.ts';
import { projectFinding } from './finding.ts';
import { projectHold } from './hold.ts';
import { projectGuest } from './guest.ts';
import { projectHouse } from './house.ts';
import { inBatches } from './in-batches.ts';
import { projectMember } from './member.ts';
import { projectPhoto } from './photo.ts';
import type { Projector } from './projector.ts';
import { projectProtection } from './protection.ts';
import { projectTag } from './tag.ts';
import { projectTerm } from './term.ts';

/** One function per kind of statement, the same for a live write and for a rebuild. */
const PROJECTORS: Projector<StatementKind> = {
  ...projectHouse,
  ...projectGuest,
  ...projectMember,
  ...projectPhoto,
  ...projectClock,
  ...projectTag,
  ...projectCovering,
  ...projectHold,
  ...projectProtection,
  ...projectFinding,
  ...projectTerm,
};

/** Applies one entry to the tables. Deterministic: the entry and the tables before it decide everything. */
export async function project(tx: Tx, entry: Entry): Promise<void> {
  const apply = PROJECTORS[entry.kind] as (tx: Tx, entry: Entry) => Promise<void>;
  await apply(tx, entry);
  const over = [...(await membersClosedOver(tx, entry)), ...(await membersLaidOver(tx, entry))];
  const subjects = [...new Set([...subjectsOf(entry), ...over])];
  await inBatches(subjects, 1000, async (subjects) => {
    const rows = subjects.map((subject) => ({ houseId: entry.house, seq: entry.seq, subject }));
    await tx.insertInto('statementSubject').values(rows).execute();
  });
}

/** A closing names only its covering, and yet is a word about each member that it hides. */
async function membersClosedOver(tx: Tx, { kind, payload }: Entry): Promise<string[]> {
  if (kind !== 'covering.closed' && kind !== 'covering.reopened') return [];
  const hidden = await tx
    .selectFrom('coveringHides')
    .select('mark')
    .where('coveringId', '=', payload.covering)
    .orderBy('position')
    .execute();
  return hidden.map(({ mark }) => memberSubject(mark));
}

/** Whatever is said of protection is a word about each member that it lies over, also about those in its zone. */
async function membersLaidOver(tx: Tx, { payload }: Entry): Promise<string[]> {
  if (!('protection' in payload)) return [];
  const over = await tx
    .selectFrom('protectionHides')
    .select('mark')
    .where('protectionId', '=', payload.protection)
    .orderBy('position')
    .orderBy('mark')
    .execute();
  return over.map(({ mark }) => memberSubject(mark));
}
