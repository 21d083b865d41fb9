import { sql } from 'kysely';
import type { LedgerExtent } from '../../services/archive/archive-material.ts';
import { formatLine } from '../ledger-file.ts';
import type { Db } from '../open-database.ts';

const NO_HASH = new Uint8Array(32);
/** What a line holds beside the entry. */
const AROUND = formatLine({ canonical: '', head: NO_HASH, leaf: NO_HASH }).length;

/** How far a ledger goes, and how many bytes its file takes. */
export async function readLedgerExtent(db: Db, house: string): Promise<LedgerExtent> {
  const { size, head } = await db
    .selectFrom('ledger')
    .select(['size', 'head'])
    .where('houseId', '=', house)
    .executeTakeFirstOrThrow();
  const { bytes } = await db
    .selectFrom('ledgerEntry')
    .select(sql<number>`coalesce(sum(octet_length(canonical)), 0)::bigint`.as('bytes'))
    .where('houseId', '=', house)
    .where('seq', '<', size)
    .executeTakeFirstOrThrow();
  return { size, head: head.toString('hex'), bytes: bytes + size * AROUND };
}

/** The lines of entries `from` until before `to`, as they stand in a ledger file. */
export async function readLedgerText(db: Db, house: string, from: number, to: number): Promise<string> {
  const rows = await db
    .selectFrom('ledgerEntry')
    .select(['canonical', 'head', 'leaf'])
    .where('houseId', '=', house)
    .where('seq', '>=', from)
    .where('seq', '<', to)
    .orderBy('seq')
    .execute();
  return rows.map(formatLine).join('');
}
