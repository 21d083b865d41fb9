import type { StampsView } from '#domain/contract/stamps';
import { parseEntry, type Entry, type StatementOf } from '#domain/ledger/statements';
import { STAMPS_SUBJECT } from '#domain/ledger/subjects';
import type { Db } from '../open-database.ts';

export async function readLastStamp(db: Db, house: string): Promise<StampsView['last']> {
  const row = await db
    .selectFrom('statementSubject')
    .innerJoin('ledgerEntry', (join) =>
      join
        .onRef('ledgerEntry.houseId', '=', 'statementSubject.houseId')
        .onRef('ledgerEntry.seq', '=', 'statementSubject.seq'),
    )
    .select('canonical')
    .where('statementSubject.houseId', '=', house)
    .where('subject', '=', STAMPS_SUBJECT)
    .orderBy('statementSubject.seq', 'desc')
    .limit(1)
    .executeTakeFirst();
  if (!row) return null;
  const { seq, payload } = parseEntry(JSON.parse(row.canonical)) as Entry<StatementOf<'head.stamped'>>;
  return { seq, size: payload.size, head: payload.head, at: payload.at, by: payload.by };
}

/** The head as it stands; null where nothing but a stamp was said since the last one. */
export async function readUnstampedHead(
  db: Db,
  house: string,
): Promise<{ size: number; head: string } | null> {
  const last = await readLastStamp(db, house);
  const said = await db
    .selectFrom('ledgerEntry')
    .select('seq')
    .where('houseId', '=', house)
    .where('seq', '>=', last?.size ?? 0)
    .where('kind', '<>', 'head.stamped')
    .limit(1)
    .executeTakeFirst();
  if (!said) return null;
  const ledger = await db
    .selectFrom('ledger')
    .select(['size', 'head'])
    .where('houseId', '=', house)
    .executeTakeFirstOrThrow();
  return { size: ledger.size, head: ledger.head.toString('hex') };
}
