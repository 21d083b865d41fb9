import { sql } from 'kysely';
import type { MemberFacts } from '#domain/contract/shapes';
import type { MemberView } from '#domain/contract/views';
import type { Mark } from '#domain/frame/mark';
import type { Db } from '../open-database.ts';
import { readLexicon } from './terms.ts';
import { rankOf, toMemberView } from './views.ts';

/** Members with what is on record of them; `stage` is the furthest one on a photo whose date stands. */
export async function readMembers(db: Db, house: string, mark?: string): Promise<MemberView[]> {
  let counted = db
    .selectFrom('tag')
    .innerJoin('photo', 'photo.id', 'tag.photoId')
    .where('tag.houseId', '=', house)
    .where('tag.state', '=', 'standing')
    .groupBy('tag.mark')
    .select((eb) => [
      'tag.mark as taggedMark',
      eb.fn.countAll<number>().as('tags'),
      eb.fn.count<number>('tag.photoId').distinct().as('photos'),
      eb.fn
        .max(rankOf(eb))
        .filterWhere('photo.capturedAt', 'is not', null)
        .filterWhere('photo.doubt', 'is', null)
        .as('rank'),
    ]);
  if (mark !== undefined) counted = counted.where('tag.mark', '=', mark);
  let query = db
    .selectFrom('member')
    .leftJoin(counted.as('counted'), 'counted.taggedMark', 'member.mark')
    .where('member.houseId', '=', house)
    .selectAll('member')
    .select(['counted.tags', 'counted.photos', 'counted.rank'])
    .orderBy('member.mark');
  if (mark !== undefined) query = query.where('member.mark', '=', mark);
  const rows = await query.execute();
  const lexicon = await readLexicon(db, house);
  return rows.map((row) =>
    toMemberView({ ...row, tags: row.tags ?? 0, photos: row.photos ?? 0, rank: row.rank ?? null }, lexicon),
  );
}

/** The schedule as it stands, with the number of tags that would outlive a retirement. */
export async function readSchedule(
  db: Db,
  house: string,
): Promise<{ facts: MemberFacts; retired: boolean; tags: number }[]> {
  const members = await db.selectFrom('member').selectAll().where('houseId', '=', house).execute();
  const tagged = await db
    .selectFrom('tag')
    .where('houseId', '=', house)
    .where('state', '=', 'standing')
    .groupBy('mark')
    .select((eb) => ['mark', eb.fn.countAll<number>().as('tags')])
    .execute();
  const tags = new Map(tagged.map((row) => [row.mark, row.tags]));
  return members.map(({ houseId: _, retired, mark, ...facts }) => ({
    facts: { ...facts, mark: mark as Mark },
    retired,
    tags: tags.get(mark) ?? 0,
  }));
}

/**
 * Whether any tag, standing or not, names the mark, or a covering lists it, leaves it out, or has closed over
 * it; or protection was said to lie over it. That it lies in the zone of a covering to come is nobody's word
 * about it.
 */
export async function isReferredTo(db: Db, house: string, mark: string): Promise<boolean> {
  const tag = db
    .selectFrom('tag')
    .select('mark')
    .where('houseId', '=', house)
    .where('mark', '=', mark)
    .limit(1);
  const hidden = db
    .selectFrom('coveringHides')
    .innerJoin('covering', 'covering.id', 'coveringHides.coveringId')
    .select('coveringHides.mark')
    .where('coveringHides.houseId', '=', house)
    .where('coveringHides.mark', '=', mark)
    .where((eb) => eb.or([eb('byZone', '=', false), eb('closedAt', 'is not', null)]))
    .limit(1);
  const laidOver = db
    .selectFrom('protectionHides')
    .select('mark')
    .where('houseId', '=', house)
    .where('mark', '=', mark)
    .limit(1);
  const leftBare = db
    .selectFrom('protection')
    .select('id')
    .where('houseId', '=', house)
    .where(sql<boolean>`except_marks ? ${mark}`)
    .limit(1);
  const leftOut = db
    .selectFrom('covering')
    .select('id')
    .where('houseId', '=', house)
    .where(sql<boolean>`except_marks ? ${mark}`)
    .limit(1);
  for (const query of [tag, hidden, leftOut, laidOver, leftBare])
    if ((await query.execute()).length > 0) return true;
  return false;
}
