import { sql } from 'kysely';
import type { FindingView, FindingsView } from '#domain/contract/findings';
import { FINDING_KINDS, stopsRecords, type FindingKind } from '#domain/record/findings/kinds';
import type { FindingFilter } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { smallPhotosById } from './small-photos.ts';

const STOPPING = FINDING_KINDS.filter(stopsRecords);

/** Photos drawn of each. */
const SHOWN = 3;

/** Findings with the answers that were given to them. */
function findings(db: Db, house: string) {
  return db
    .selectFrom('finding')
    .leftJoin('findingAnswer as answer', (join) =>
      join.onRef('answer.houseId', '=', 'finding.houseId').onRef('answer.key', '=', 'finding.key'),
    )
    .where('finding.houseId', '=', house);
}

/** Answered for what it says today. */
const IS_ACCEPTED = sql<boolean>`coalesce(answer.basis = finding.basis, false)`;

/** Tags of which an unanswered finding says that they cannot be true as they stand. */
export async function readContradictedTags(db: Db, house: string): Promise<ReadonlySet<string>> {
  const rows = await findings(db, house)
    .where('finding.kind', 'in', STOPPING)
    .where(sql<boolean>`not ${IS_ACCEPTED}`)
    .innerJoin('findingThing as thing', (join) =>
      join.onRef('thing.houseId', '=', 'finding.houseId').onRef('thing.key', '=', 'finding.key'),
    )
    .where('thing.thing', 'like', 'tag:%')
    .select('thing.thing')
    .distinct()
    .execute();
  return new Set(rows.map(({ thing }) => thing.slice('tag:'.length)));
}

/** Tags that somebody can read although the program cannot. */
export async function readAcceptedUnreadable(db: Db, house: string): Promise<ReadonlySet<string>> {
  const rows = await findings(db, house)
    .where('finding.kind', '=', 'unreadable')
    .where(IS_ACCEPTED)
    .select('finding.key')
    .execute();
  return new Set(rows.map(({ key }) => key.slice('unreadable:'.length)));
}

export async function readFindingCounts(db: Db, house: string): Promise<FindingsView['counts']> {
  const rows = await findings(db, house)
    .groupBy('finding.kind')
    .select((eb) => [
      'finding.kind',
      eb.fn
        .countAll<number>()
        .filterWhere(sql<boolean>`not ${IS_ACCEPTED}`)
        .as('open'),
      eb.fn.countAll<number>().filterWhere(IS_ACCEPTED).as('accepted'),
    ])
    .execute();
  return rows.toSorted((a, b) => order(a.kind) - order(b.kind));
}

const order = (kind: FindingKind) => FINDING_KINDS.indexOf(kind);

export async function readFindings(
  db: Db,
  house: string,
  { kind, state, keys, photo, mark, covering, offset = 0, limit }: FindingFilter,
): Promise<FindingView[]> {
  let query = findings(db, house);
  if (kind !== undefined) query = query.where('finding.kind', '=', kind);
  if (state !== undefined)
    query = query.where(state === 'accepted' ? IS_ACCEPTED : sql<boolean>`not ${IS_ACCEPTED}`);
  if (keys !== undefined) query = query.where('finding.key', 'in', [...keys]);
  if (photo !== undefined) query = query.where('finding.key', 'in', keysAbout(db, house, `photo:${photo}`));
  if (mark !== undefined) query = query.where(sql<boolean>`finding.content -> 'marks' ? ${mark}`);
  if (covering !== undefined) query = query.where(sql<boolean>`finding.content ->> 'covering' = ${covering}`);
  const kinds = sql.join(FINDING_KINDS.map((name) => sql.lit(name)));
  const rows = await query
    .select(['finding.kind', 'finding.basis', 'finding.content'])
    .select(['answer.reason', 'answer.saidAt', 'answer.saidBy', 'answer.basis as answered'])
    .orderBy(sql`array_position(array[${kinds}]::text[], finding.kind)`)
    .orderBy('finding.at', (at) => at.desc().nullsLast())
    .orderBy('finding.key')
    .offset(offset)
    .limit(limit)
    .execute();
  const wanted = rows.flatMap(({ content }) => content.photos.slice(0, SHOWN));
  const small = new Map((await smallPhotosById(db, [...new Set(wanted)])).map((photo) => [photo.id, photo]));
  return rows.map(({ content, basis, reason, saidAt, saidBy, answered }) => ({
    ...content,
    basis,
    shown: content.photos.slice(0, SHOWN).flatMap((id) => small.get(id) ?? []),
    stops: stopsRecords(content.kind),
    answer:
      reason === null || saidAt === null
        ? null
        : { at: saidAt.toISOString(), by: saidBy, reason, stands: answered === basis },
  }));
}

function keysAbout(db: Db, house: string, thing: string) {
  return db.selectFrom('findingThing').select('key').where('houseId', '=', house).where('thing', '=', thing);
}
