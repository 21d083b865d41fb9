import type { CoveringKind } from '#domain/contract/shapes';
import type { JournalView } from '#domain/contract/journal-views';
import type { KeptRelease } from '../../services/record-store.ts';
import type { Db } from '../open-database.ts';

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
  const { withdrawnAt, withdrawnBy, withdrawReason } = row;
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
    withdrawn: withdrawnAt && {
      at: withdrawnAt.toISOString(),
      by: withdrawnBy,
      reason: withdrawReason ?? '',
    },
  };
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
