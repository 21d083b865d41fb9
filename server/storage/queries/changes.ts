import { sql } from 'kysely';
import type { HouseStateView, StatementEvent } from '#domain/contract/house-events';
import type { Db } from '../open-database.ts';

/** Two rows by their keys: it is asked for often. */
export async function readHouseState(db: Db, house: string): Promise<HouseStateView> {
  return db
    .selectFrom('ledger')
    .leftJoin('picturesMade', 'picturesMade.houseId', 'ledger.houseId')
    .select((eb) => ['ledger.size', eb.fn.coalesce('picturesMade.made', sql<number>`0`).as('made')])
    .where('ledger.houseId', '=', house)
    .executeTakeFirstOrThrow();
}

export async function readStatementsFrom(
  db: Db,
  house: string,
  from: number,
  limit: number,
): Promise<StatementEvent[]> {
  const rows = await db
    .selectFrom('ledgerEntry')
    .select(['seq', 'kind', sql<string | null>`canonical::jsonb #>> '{payload,photo}'`.as('photo')])
    .where('houseId', '=', house)
    .where('seq', '>=', from)
    .orderBy('seq')
    .limit(limit)
    .execute();
  return rows.map((row) => ({ type: 'statement', ...row }));
}
