import { LINK_DAYS } from '#domain/contract/link-days';
import type { InvitedView } from '#domain/contract/views';
import type { LinkRequest, ReadLink } from '../../services/accounts.ts';
import { Failure } from '../../services/failure.ts';
import type { Db } from '../open-database.ts';
import { jsonOrNull } from '../projection/json.ts';
import { hashSecret, newSecret } from './secrets.ts';

const LINK_LIFE_MS = LINK_DAYS * 24 * 60 * 60 * 1000;

/** A one-time link; making one for the first account ends the ones that were printed before. */
export async function makeLink(db: Db, now: Date, link: LinkRequest): Promise<string> {
  const secret = newSecret();
  if (link.purpose === 'first-account')
    await db.deleteFrom('accountLink').where('purpose', '=', link.purpose).execute();
  await db
    .insertInto('accountLink')
    .values({
      ...link,
      madeBy: jsonOrNull(link.madeBy),
      secretHash: hashSecret(secret),
      createdAt: now,
      expiresAt: new Date(now.getTime() + LINK_LIFE_MS),
      usedAt: null,
    })
    .execute();
  return secret;
}

export async function readLink(db: Db, now: Date, secret: string): Promise<ReadLink> {
  const row = await db
    .selectFrom('accountLink')
    .leftJoin('house', 'house.id', 'accountLink.houseId')
    .where('secretHash', '=', hashSecret(secret))
    .where('usedAt', 'is', null)
    .where('expiresAt', '>', now)
    .select(['purpose', 'email', 'role', 'madeBy', 'accountLink.houseId', 'house.name as house'])
    .executeTakeFirst();
  if (!row) throw new Failure('link-used-or-expired');
  return row;
}

/** Of two who spend the same link, one gets link-used-or-expired. */
export async function spendLink(db: Db, now: Date, secret: string): Promise<void> {
  const spent = await db
    .updateTable('accountLink')
    .set({ usedAt: now })
    .where('secretHash', '=', hashSecret(secret))
    .where('usedAt', 'is', null)
    .where('expiresAt', '>', now)
    .returning('purpose')
    .execute();
  if (spent.length === 0) throw new Failure('link-used-or-expired');
}

/** Who was given a role of the house and has no account yet, while the link can be used; each once, by the last link. */
export async function readInvited(db: Db, now: Date, house: string): Promise<InvitedView[]> {
  const rows = await db
    .selectFrom('accountLink')
    .where('houseId', '=', house)
    .where('usedAt', 'is', null)
    .where('expiresAt', '>', now)
    .where('email', 'not in', db.selectFrom('person').select('email'))
    .select(['email', 'role', 'expiresAt'])
    .orderBy('expiresAt')
    .execute();
  const last = new Map<string, InvitedView>();
  for (const { email, role, expiresAt } of rows)
    if (email !== null && role !== null) last.set(email, { email, role, until: expiresAt.toISOString() });
  return [...last.values()];
}
