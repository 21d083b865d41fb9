import { sql } from 'kysely';
import type { Person } from '#domain/contract/shapes';
import type { FindingView, FindingsView } from '#domain/contract/findings';
import { FINDING_KINDS, stopsRecords, type FindingKind } from '#domain/record/findings/kinds';
import { groupBy } from '#domain/group-by';
import type { TagFinding } from '#domain/record/requirement';
import type { FindingFilter } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import { smallPhotosById } from './small-photos.ts';

/** Photos drawn of each. */
const SHOWN = 3;

interface Doubt {
  readonly by: string;
  readonly reason: string;
}

/** Findings with the answers that were given to them. */
function findings(db: Db, house: string) {
  return db
    .selectFrom('finding')
    .leftJoin('findingAnswer as answer', (join) =>
      join.onRef('answer.houseId', '=', 'finding.houseId').onRef('answer.key', '=', 'finding.key'),
    )
    .where('finding.houseId', '=', house);
}

/** As kinds are shown. */
const IN_ORDER = sql`array_position(array[${sql.join(FINDING_KINDS.map((kind) => sql.lit(kind)))}]::text[], finding.kind)`;

/** Answered for what it says today. */
const IS_ACCEPTED = sql<boolean>`coalesce(answer.basis = finding.basis, false)`;

/** What is to be looked at about tags of the house, in the order in which kinds are shown. */
export async function readTagFindings(
  db: Db,
  house: string,
  tags: 'all' | readonly string[],
): Promise<ReadonlyMap<string, TagFinding[]>> {
  if (tags.length === 0) return new Map();
  let query = findings(db, house)
    .innerJoin('findingThing as thing', (join) =>
      join.onRef('thing.houseId', '=', 'finding.houseId').onRef('thing.key', '=', 'finding.key'),
    )
    .select(['thing.thing', 'finding.kind', 'answer.reason', 'answer.saidBy', IS_ACCEPTED.as('isAccepted')])
    .select(
      sql<Doubt | null>`case when finding.kind = 'disputed' then finding.content -> 'facts' end`.as('doubt'),
    )
    .orderBy(IN_ORDER)
    .orderBy('finding.key');
  query =
    tags === 'all'
      ? query.where('thing.thing', 'like', 'tag:%')
      : query.where('thing.thing', '=', sql<string>`any(${tags.map((tag) => `tag:${tag}`)})`);
  const rows = await query.execute();
  const ofTag = groupBy(rows, ({ thing }) => thing.slice('tag:'.length));
  return new Map(
    [...ofTag].map(([tag, found]) => [
      tag,
      found.map(({ kind, isAccepted, reason, saidBy, doubt }) => ({
        kind,
        ...(doubt ? { doubt: { by: doubt.by, reason: doubt.reason } } : {}),
        accepted: isAccepted ? { by: saidBy?.name ?? null, reason: reason ?? '' } : null,
      })),
    ]),
  );
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
  const rows = await query
    .select(['finding.kind', 'finding.basis', 'finding.content'])
    .select(['answer.reason', 'answer.saidAt', 'answer.saidBy', 'answer.basis as answered'])
    .orderBy(IN_ORDER)
    .orderBy('finding.at', (at) => at.desc().nullsLast())
    .orderBy('finding.key')
    .offset(offset)
    .limit(limit)
    .execute();
  const doubted = rows.flatMap(({ kind: is, content }) =>
    is === 'disputed' ? content.tags.map(({ tag }) => tag) : [],
  );
  const taggers = await readTaggers(db, doubted);
  const wanted = rows.flatMap(({ content }) => content.photos.slice(0, SHOWN));
  const small = new Map((await smallPhotosById(db, [...new Set(wanted)])).map((photo) => [photo.id, photo]));
  return rows.map(({ content, basis, reason, saidAt, saidBy, answered }) => ({
    ...content,
    basis,
    shown: content.photos.slice(0, SHOWN).flatMap((id) => small.get(id) ?? []),
    taggedBy: taggers.get(content.tags[0]?.tag ?? '') ?? null,
    stops: stopsRecords(content.kind),
    answer:
      reason === null || saidAt === null
        ? null
        : { at: saidAt.toISOString(), by: saidBy, reason, stands: answered === basis },
  }));
}

async function readTaggers(db: Db, tags: readonly string[]): Promise<Map<string, Person | null>> {
  if (tags.length === 0) return new Map();
  const rows = await db.selectFrom('tag').select(['id', 'saidBy']).where('id', 'in', tags).execute();
  return new Map(rows.map(({ id, saidBy }) => [id, saidBy]));
}

function keysAbout(db: Db, house: string, thing: string) {
  return db.selectFrom('findingThing').select('key').where('houseId', '=', house).where('thing', '=', thing);
}
