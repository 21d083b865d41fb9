import type { Db } from '../open-database.ts';
import { hashSecret, newSecret } from './secrets.ts';

/** Last use is noted at most once a minute: a page asks for many pictures. */
const USE_NOTED_EVERY_MS = 60_000;

export async function makeGuestSecret(db: Db, guest: string): Promise<string> {
  const secret = newSecret();
  await db
    .insertInto('guestSecret')
    .values({ secretHash: hashSecret(secret), guestId: guest, lastUsedAt: null })
    .execute();
  return secret;
}

export async function guestOf(db: Db, secret: string): Promise<string | undefined> {
  const row = await db
    .selectFrom('guestSecret')
    .select('guestId')
    .where('secretHash', '=', hashSecret(secret))
    .executeTakeFirst();
  return row?.guestId;
}

export async function noteGuest(db: Db, now: Date, secret: string): Promise<void> {
  const before = new Date(now.getTime() - USE_NOTED_EVERY_MS);
  await db
    .updateTable('guestSecret')
    .set({ lastUsedAt: now })
    .where('secretHash', '=', hashSecret(secret))
    .where((eb) => eb.or([eb('lastUsedAt', 'is', null), eb('lastUsedAt', '<', before)]))
    .execute();
}

export async function guestUses(
  db: Db,
  guests: readonly string[],
): Promise<ReadonlyMap<string, string | null>> {
  if (guests.length === 0) return new Map();
  const rows = await db
    .selectFrom('guestSecret')
    .select((eb) => ['guestId', eb.fn.max('lastUsedAt').as('lastUsedAt')])
    .where('guestId', 'in', guests)
    .groupBy('guestId')
    .execute();
  return new Map(rows.map(({ guestId, lastUsedAt }) => [guestId, lastUsedAt && lastUsedAt.toISOString()]));
}
