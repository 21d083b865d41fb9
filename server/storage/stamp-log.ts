import type { StampsView, StampTroubleReason } from '#domain/contract/stamps';
import { STAMPS_SUBJECT } from '#domain/ledger/subjects';
import type { StampLog } from '../services/stamps.ts';
import type { Db } from './open-database.ts';

export function stampLog(db: Db, now: () => Date): StampLog {
  return {
    due: (before) => readDue(db, before),
    trouble: (house) => readTrouble(db, house),
    noteTrouble: (house, reason) => noteTrouble(db, now(), house, reason),
  };
}

async function readDue(db: Db, before: Date): Promise<string[]> {
  const rows = await db
    .selectFrom('ledger')
    .select('houseId')
    .where((eb) => {
      const stampedSince = eb
        .selectFrom('statementSubject as about')
        .innerJoin('ledgerEntry as entry', (join) =>
          join.onRef('entry.houseId', '=', 'about.houseId').onRef('entry.seq', '=', 'about.seq'),
        )
        .select('entry.seq')
        .whereRef('about.houseId', '=', 'ledger.houseId')
        .where('about.subject', '=', STAMPS_SUBJECT)
        .where('entry.at', '>', before);
      const inTrouble = eb
        .selectFrom('stampTrouble')
        .select('reason')
        .whereRef('stampTrouble.houseId', '=', 'ledger.houseId');
      return eb.or([eb.not(eb.exists(stampedSince)), eb.exists(inTrouble)]);
    })
    .orderBy('houseId')
    .execute();
  return rows.map(({ houseId }) => houseId);
}

async function readTrouble(db: Db, house: string): Promise<StampsView['trouble']> {
  const row = await db.selectFrom('stampTrouble').selectAll().where('houseId', '=', house).executeTakeFirst();
  return row ? { at: row.at.toISOString(), reason: row.reason } : null;
}

async function noteTrouble(
  db: Db,
  at: Date,
  house: string,
  reason: StampTroubleReason | null,
): Promise<void> {
  if (reason === null) {
    await db.deleteFrom('stampTrouble').where('houseId', '=', house).execute();
    return;
  }
  await db
    .insertInto('stampTrouble')
    .values({ houseId: house, at, reason })
    .onConflict((c) => c.column('houseId').doUpdateSet({ at, reason }))
    .execute();
}
