import { sql } from 'kysely';
import type { SessionView } from '#domain/contract/views';
import { CHANNEL } from '../ledger-store.ts';
import type { Db } from '../open-database.ts';

/** `here`: the id of the session that asks. */
export async function listSessions(
  db: Db,
  now: Date,
  person: string,
  here: string | null,
): Promise<SessionView[]> {
  const rows = await db
    .selectFrom('personSession')
    .selectAll()
    .where('userId', '=', person)
    .where('expiresAt', '>', now)
    .orderBy('updatedAt', 'desc')
    .execute();
  return rows.map(({ id, createdAt, updatedAt, userAgent }) => ({
    id,
    createdAt: createdAt.toISOString(),
    seenAt: updatedAt.toISOString(),
    userAgent: userAgent === '' ? null : userAgent,
    here: id === here,
  }));
}

/**
 * Ends the calendar addresses too: whoever ends everything does not trust what is about, and an address
 * reads the house without a sign-in (OWASP ASVS 4.0.3, 3.3.3, from memory).
 */
export async function endSessions(db: Db, person: string, { tokens }: { tokens: boolean }): Promise<void> {
  await db.deleteFrom('personSession').where('userId', '=', person).execute();
  await db.deleteFrom('calendarLink').where('personId', '=', person).execute();
  if (tokens) await db.deleteFrom('accessToken').where('personId', '=', person).execute();
  await announceEnd(db, person);
}

/** Has every process end the event streams of the person; whoever may come back does. */
export async function announceEnd(db: Db, person: string): Promise<void> {
  await sql`select pg_notify(${CHANNEL}, ${JSON.stringify({ ended: person })})`.execute(db);
}
