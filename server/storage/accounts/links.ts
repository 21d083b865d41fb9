import { sql } from 'kysely';
import type { InvitedView } from '#domain/contract/views';
import type { LinkRequest, ReadLink } from '../../services/accounts.ts';
import { Failure } from '../../services/failure.ts';
import type { Db } from '../open-database.ts';
import { jsonOrNull } from '../projection/json.ts';
import { hashSecret, newSecret } from './secrets.ts';

/** A one-time link. One for the first account or for a new password ends those that were made for it before. */
export async function makeLink(db: Db, now: Date, { until, ...link }: LinkRequest): Promise<string> {
  const secret = newSecret();
  if (link.purpose !== 'join-house')
    await db
      .deleteFrom('accountLink')
      .where('purpose', '=', link.purpose)
      .where('personId', 'is not distinct from', link.personId)
      .execute();
  await db
    .insertInto('accountLink')
    .values({
      ...link,
      madeBy: jsonOrNull(link.madeBy),
      secretHash: hashSecret(secret),
      createdAt: now,
      expiresAt: until,
      usedAt: null,
    })
    .execute();
  return secret;
}

/**
 * Links that can be used: neither used nor too old, and, being somebody's word, made by somebody who still keeps
 * the record of the house.
 */
function usable(db: Db, now: Date) {
  return db
    .selectFrom('accountLink')
    .where('usedAt', 'is', null)
    .where('expiresAt', '>', now)
    .where((eb) =>
      eb.or([
        eb('accountLink.madeBy', 'is', null),
        eb.exists(
          eb
            .selectFrom('houseRole')
            .select('personId')
            .whereRef('houseRole.houseId', '=', 'accountLink.houseId')
            .where('houseRole.role', '=', 'owner')
            .where('houseRole.personId', '=', sql<string>`account_link.made_by ->> 'id'`),
        ),
      ]),
    );
}

export async function readLink(db: Db, now: Date, secret: string): Promise<ReadLink> {
  const row = await usable(db, now)
    .leftJoin('house', 'house.id', 'accountLink.houseId')
    .where('secretHash', '=', hashSecret(secret))
    .select(['purpose', 'email', 'role', 'madeBy', 'personId', 'expiresAt'])
    .select(['accountLink.houseId', 'house.name as house'])
    .executeTakeFirst();
  if (!row) throw new Failure('link-used-or-expired');
  const { expiresAt, ...link } = row;
  return { ...link, until: expiresAt.toISOString() };
}

/** Of two who spend the same link, one gets link-used-or-expired. */
export async function spendLink(db: Db, now: Date, secret: string): Promise<void> {
  const spent = await db
    .updateTable('accountLink')
    .set({ usedAt: now })
    .where('secretHash', '=', hashSecret(secret))
    .where('id', 'in', usable(db, now).select('accountLink.id'))
    .returning('purpose')
    .execute();
  if (spent.length === 0) throw new Failure('link-used-or-expired');
}

/** Who was given a role of the house and has no account yet, a row a link. */
export async function readInvited(db: Db, now: Date, house: string): Promise<InvitedView[]> {
  const rows = await usable(db, now)
    .where('accountLink.houseId', '=', house)
    .where('purpose', '=', 'join-house')
    .where('email', 'not in', db.selectFrom('person').select('email'))
    .select(['id', 'email', 'role', 'madeBy', 'expiresAt'])
    .orderBy('expiresAt')
    .execute();
  return rows.flatMap(({ id, email, role, madeBy, expiresAt }) =>
    email === null || role === null
      ? []
      : [{ id, email, role, by: madeBy && madeBy.name, until: expiresAt.toISOString() }],
  );
}

export async function endInvitation(db: Db, house: string, invitation: string): Promise<void> {
  await db
    .deleteFrom('accountLink')
    .where('id', '=', invitation)
    .where('houseId', '=', house)
    .where('purpose', '=', 'join-house')
    .where('usedAt', 'is', null)
    .execute();
}
