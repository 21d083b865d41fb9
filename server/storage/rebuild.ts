import { parseEntry } from '#domain/ledger/statements';
import { refreshAllFindings } from './findings/refresh.ts';
import { lockLedger } from './ledger-store.ts';
import type { Tx } from './tx.ts';
import type { Db } from './open-database.ts';
import { project } from './projection/project.ts';
import { PROJECTED } from './tables.ts';

const PAGE = 500;

/** Raise it whenever projectors or what they call decide something differently, so that old tables are made anew. */
export const PROJECTION_VERSION = 9;

/** Rebuilds the tables of a database that an older program filled; resolves to whether it did. */
export async function rebuildIfOlder(db: Db): Promise<boolean> {
  const { version } = await db.selectFrom('projectionVersion').select('version').executeTakeFirstOrThrow();
  if (version >= PROJECTION_VERSION) return false;
  await rebuildAll(db);
  await db.updateTable('projectionVersion').set({ version: PROJECTION_VERSION }).execute();
  return true;
}

/** Empties the projected tables and applies every ledger again, a house in a transaction. */
export async function rebuildAll(db: Db): Promise<{ house: string; entries: number }[]> {
  const ledgers = await db.selectFrom('ledger').select('houseId').orderBy('houseId').execute();
  const done = [];
  for (const { houseId } of ledgers) done.push({ house: houseId, entries: await rebuildHouse(db, houseId) });
  return done;
}

export function rebuildHouse(db: Db, house: string): Promise<number> {
  return db.transaction().execute(async (tx) => {
    const frontier = await lockLedger(tx, house);
    if (!frontier) return 0;
    for (const table of PROJECTED)
      await tx
        .deleteFrom(table)
        .where(table === 'house' ? 'id' : 'houseId', '=', house)
        .execute();
    for (let from = 0; from < frontier.size; from += PAGE) await applyPage(tx, house, from);
    await refreshAllFindings(tx, house);
    return frontier.size;
  });
}

async function applyPage(tx: Tx, house: string, from: number): Promise<void> {
  const rows = await tx
    .selectFrom('ledgerEntry')
    .select('canonical')
    .where('houseId', '=', house)
    .where('seq', '>=', from)
    .where('seq', '<', from + PAGE)
    .orderBy('seq')
    .execute();
  for (const { canonical } of rows) await project(tx, parseEntry(JSON.parse(canonical)));
}
