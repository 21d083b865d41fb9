import type { TermView } from '#domain/contract/terms';
import { lexiconOf, type Lexicon } from '#domain/lexicon/lexicon';
import { findKind } from '#domain/lexicon/track-of-kind';
import type { KindSighting } from '../../services/record-store.ts';
import type { Mark } from '#domain/frame/mark';
import type { Db } from '../open-database.ts';

/** In the order of their ids, so that every reader makes the same lexicon of them. */
export async function readTerms(db: Db, house: string): Promise<TermView[]> {
  const rows = await db.selectFrom('term').selectAll().where('houseId', '=', house).orderBy('id').execute();
  return rows.map(({ id, facts, saidBy, saidAt }) => ({
    ...facts,
    id,
    by: saidBy,
    at: saidAt.toISOString(),
  }));
}

export async function readLexicon(db: Db, house: string): Promise<Lexicon> {
  return lexiconOf(await readTerms(db, house));
}

/** What tags that stand show of the members of one kind: the newest photo first, undated last. */
export async function readKindSightings(
  db: Db,
  house: string,
  kind: string,
  limit: number,
): Promise<{ sightings: KindSighting[]; total: number }> {
  const lexicon = await readLexicon(db, house);
  const members = await db
    .selectFrom('member')
    .select(['mark', 'kind'])
    .where('houseId', '=', house)
    .execute();
  const marks = members
    .filter((member) => findKind(member.kind, lexicon)?.id === kind)
    .map(({ mark }) => mark);
  if (marks.length === 0) return { sightings: [], total: 0 };
  const standing = db
    .selectFrom('tag')
    .where('tag.houseId', '=', house)
    .where('tag.state', '=', 'standing')
    .where('tag.mark', 'in', marks);
  const { total } = await standing
    .select((eb) => eb.fn.countAll<number>().as('total'))
    .executeTakeFirstOrThrow();
  const sightings = await standing
    .innerJoin('photo', 'photo.id', 'tag.photoId')
    .select(['tag.id as tag', 'tag.photoId as photo', 'tag.mark', 'tag.stage'])
    .select(['photo.fileName', 'photo.capture'])
    .orderBy('photo.capturedAt', (order) => order.desc().nullsLast())
    .orderBy('tag.id')
    .limit(limit)
    .execute();
  return { sightings: sightings.map((seen) => ({ ...seen, mark: seen.mark as Mark })), total: Number(total) };
}
