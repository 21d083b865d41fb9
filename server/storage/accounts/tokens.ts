import type { TokenView } from '#domain/contract/views';
import type { NewToken } from '../../services/accounts.ts';
import { Failure } from '../../services/failure.ts';
import type { Db } from '../open-database.ts';
import type { Row } from '../tables.ts';
import { hashSecret, newSecret } from './secrets.ts';

/** Last use is noted at most once a minute: a script must not write a row for every read. */
const USE_NOTED_EVERY_MS = 60_000;

export async function listTokens(db: Db, person: string): Promise<TokenView[]> {
  const query = db.selectFrom('accessToken').selectAll().where('personId', '=', person);
  return (await query.orderBy('createdAt').execute()).map(toView);
}

export async function createToken(
  db: Db,
  now: Date,
  person: string,
  { id, name, expiresAt }: NewToken,
): Promise<{ token: TokenView; secret: string }> {
  const secret = newSecret('arakabe_');
  const row = await db
    .insertInto('accessToken')
    .values({
      id,
      personId: person,
      name,
      secretHash: hashSecret(secret),
      createdAt: now,
      expiresAt,
      lastUsedAt: null,
    })
    .onConflict((c) => c.doNothing())
    .returningAll()
    .executeTakeFirst();
  // The secret cannot be shown twice, so a repeated request cannot be answered: a new id makes a new token.
  if (!row) throw new Failure('id-used-for-something-else', { id });
  return { token: toView(row), secret };
}

export async function endToken(db: Db, person: string, token: string): Promise<boolean> {
  const ended = await db
    .deleteFrom('accessToken')
    .where('id', '=', token)
    .where('personId', '=', person)
    .returning('id')
    .execute();
  return ended.length > 0;
}

export async function personOfToken(db: Db, now: Date, secret: string): Promise<Row<'person'> | undefined> {
  const row = await db
    .selectFrom('accessToken')
    .innerJoin('person', 'person.id', 'accessToken.personId')
    .where('secretHash', '=', hashSecret(secret))
    .where((eb) => eb.or([eb('expiresAt', 'is', null), eb('expiresAt', '>', now)]))
    .selectAll('person')
    .select(['accessToken.id as tokenId', 'lastUsedAt'])
    .executeTakeFirst();
  if (!row) return undefined;
  const { tokenId, lastUsedAt, ...person } = row;
  if (!lastUsedAt || now.getTime() - lastUsedAt.getTime() > USE_NOTED_EVERY_MS)
    await db.updateTable('accessToken').set({ lastUsedAt: now }).where('id', '=', tokenId).execute();
  return person;
}

function toView(row: Row<'accessToken'>): TokenView {
  return {
    id: row.id,
    name: row.name,
    createdAt: row.createdAt.toISOString(),
    lastUsedAt: row.lastUsedAt && row.lastUsedAt.toISOString(),
    expiresAt: row.expiresAt && row.expiresAt.toISOString(),
  };
}
