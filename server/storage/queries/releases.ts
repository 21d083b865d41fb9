import { sql } from 'kysely';
import type { ReleasedMember, ReleaseFacts, TakenBackView } from '#domain/contract/hold';
import type { CoveringKind } from '#domain/contract/shapes';
import type { JournalView } from '#domain/contract/journal-views';
import { parseEntry } from '#domain/ledger/statements';
import { coveringSubject } from '#domain/ledger/subjects';
import type { HiddenNow } from '#domain/record/release';
import type { WaivedMember } from '#domain/record/waived';
import type { KeptRelease } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';
import type { Row } from '../tables.ts';

export async function readRelease(db: Db, release: string): Promise<KeptRelease | undefined> {
  const row = await db
    .selectFrom('release')
    .innerJoin('covering', 'covering.id', 'release.coveringId')
    .innerJoin('house', 'house.id', 'release.houseId')
    .innerJoin('ledgerEntry as entry', (join) =>
      join.onRef('entry.houseId', '=', 'release.houseId').onRef('entry.seq', '=', 'release.seq'),
    )
    .where('release.id', '=', release)
    .selectAll('release')
    .select(['covering.name', 'covering.kind', 'covering.closedAt', 'covering.closedRelease'])
    .select(['house.name as houseName', 'house.zone', 'entry.head'])
    .executeTakeFirst();
  if (!row) return undefined;
  return {
    facts: row.facts,
    seq: row.seq,
    headAfter: row.head.toString('hex'),
    at: row.saidAt.toISOString(),
    by: row.saidBy,
    house: { id: row.houseId, name: row.houseName, zone: row.zone },
    covering: {
      name: row.name,
      kind: row.kind as CoveringKind,
      closedAt: row.closedAt && row.closedAt.toISOString(),
      closedUnder: row.closedRelease,
    },
    withdrawn: toTakenBack(row),
    ended: await readEnd(db, row),
  };
}

/** Who said that the covering is ready anew while the release stood. */
async function readEnd(db: Db, { houseId, coveringId, seq, withdrawnAt }: Row<'release'>) {
  const ready = await db
    .selectFrom('statementSubject as about')
    .innerJoin('ledgerEntry as entry', (join) =>
      join.onRef('entry.houseId', '=', 'about.houseId').onRef('entry.seq', '=', 'about.seq'),
    )
    .where('about.houseId', '=', houseId)
    .where('about.subject', '=', coveringSubject(coveringId))
    .where('about.seq', '>', seq)
    .where('entry.kind', '=', 'covering.ready')
    .orderBy('about.seq')
    .limit(1)
    .select('entry.canonical')
    .executeTakeFirst();
  if (!ready) return null;
  const { at, by } = parseEntry(JSON.parse(ready.canonical));
  return withdrawnAt && withdrawnAt.toISOString() <= at ? null : { at, by };
}

/** By covering, what each of these releases accepts without a record; of a large release only that is read. */
export async function readWaived(db: Db, releases: readonly string[]): Promise<Map<string, WaivedMember[]>> {
  if (releases.length === 0) return new Map();
  const rows = await db
    .selectFrom('release')
    .select(['id', 'coveringId', 'saidAt', 'saidBy', 'withdrawnAt', 'withdrawnBy', 'withdrawReason'])
    .select(sql<ReleaseFacts['waived']>`facts -> 'waived'`.as('waived'))
    .select(
      sql<ReleasedMember[]>`jsonb_path_query_array(facts, '$.hides[*] ? (@.state == "waived")')`.as('hides'),
    )
    .where('id', 'in', releases)
    .execute();
  return new Map(
    rows.map(({ id, coveringId, saidAt, saidBy, waived, hides, ...row }) => {
      const reasons = new Map(waived.map(({ mark, reason }) => [mark, reason]));
      const said = { release: id, at: saidAt.toISOString(), by: saidBy, takenBack: toTakenBack(row) };
      const members = hides.map((member) => ({
        ...member,
        waiver: { ...said, reason: reasons.get(member.mark) ?? '' },
      }));
      return [coveringId, members];
    }),
  );
}

/** By covering, what each of these releases speaks of. */
export async function readReleasedExtent(
  db: Db,
  releases: readonly string[],
): Promise<Map<string, HiddenNow[]>> {
  if (releases.length === 0) return new Map();
  const rows = await db
    .selectFrom('release')
    .select('coveringId')
    .select(
      sql<HiddenNow[]>`(select coalesce(jsonb_agg(jsonb_build_object(
        'mark', one -> 'mark', 'stretch', one -> 'stretch')), '[]')
        from jsonb_array_elements(facts -> 'hides') as one)`.as('extent'),
    )
    .where('id', 'in', releases)
    .execute();
  return new Map(rows.map(({ coveringId, extent }) => [coveringId, extent]));
}

/** By covering, of the release that it closed under, who took it back since and why. */
export async function readTakenBack(
  db: Db,
  coverings: readonly string[],
): Promise<Map<string, TakenBackView>> {
  if (coverings.length === 0) return new Map();
  const rows = await db
    .selectFrom('covering')
    .innerJoin('release', 'release.id', 'covering.closedRelease')
    .select(['covering.id', 'withdrawnAt', 'withdrawnBy', 'withdrawReason'])
    .where('covering.id', 'in', coverings)
    .where('withdrawnAt', 'is not', null)
    .execute();
  return new Map(
    rows.flatMap(({ id, ...row }) => {
      const takenBack = toTakenBack(row);
      return takenBack ? [[id, takenBack]] : [];
    }),
  );
}

type Withdrawn = Pick<Row<'release'>, 'withdrawnAt' | 'withdrawnBy' | 'withdrawReason'>;

function toTakenBack({ withdrawnAt, withdrawnBy, withdrawReason }: Withdrawn): TakenBackView | null {
  return withdrawnAt && { at: withdrawnAt.toISOString(), by: withdrawnBy, reason: withdrawReason ?? '' };
}

export async function readHolds(db: Db, house: string, limit: number): Promise<JournalView['holds']> {
  const rows = await db
    .selectFrom('covering')
    .select(['id', 'name', 'holdState'])
    .where('houseId', '=', house)
    .where('closedAt', 'is', null)
    .where('holdState', 'in', ['ready', 'refused'])
    .orderBy('holdAt')
    .orderBy('id')
    .limit(limit)
    .execute();
  return rows.map(({ id, name, holdState }) => ({
    id,
    name,
    state: holdState === 'ready' ? 'ready' : 'refused',
  }));
}
