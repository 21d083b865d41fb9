import { randomUUID } from 'node:crypto';
import type { AccountView } from '#domain/contract/views';
import type { NewPerson, ReadLink } from '../../services/accounts.ts';
import { Failure } from '../../services/failure.ts';
import type { Db } from '../open-database.ts';
import { readLink, spendLink } from './links.ts';
import type { SignInLibrary } from './sign-in-library.ts';

interface HashedPerson {
  readonly name: string;
  readonly email: string;
  readonly passwordHash: string;
}

/** Hashing takes a good part of a second on purpose, so it happens before the transaction. */
export async function hashed(
  library: SignInLibrary,
  { name, email, password }: NewPerson,
): Promise<HashedPerson> {
  const context = await library.$context;
  return { name, email: email.toLowerCase(), passwordHash: await context.password.hash(password) };
}

export async function createByLink(
  db: Db,
  library: SignInLibrary,
  now: Date,
  secret: string,
  person: NewPerson,
): Promise<{ account: AccountView; link: ReadLink }> {
  const link = await readLink(db, now, secret);
  if (link.purpose === 'new-password') throw new Failure('link-used-or-expired');
  assertInvited(link, person);
  const ready = await hashed(library, person);
  return db.transaction().execute(async (tx) => {
    await spendLink(tx, now, secret);
    return { account: await insertPerson(tx, ready, link.purpose === 'first-account'), link };
  });
}

/** A role is given to whom it was meant for, not to whoever found the link. */
function assertInvited({ email: invited }: ReadLink, { email }: NewPerson): void {
  if (invited === null || email.toLowerCase() === invited) return;
  const message = 'The link was made for another e-mail address.';
  throw new Failure('invalid-request', { count: 1 }, [{ path: 'body.email', message }]);
}

/** The rows that the sign-in library reads: a person and a credential of kind 'credential'. */
export async function insertPerson(db: Db, person: HashedPerson, keeper: boolean): Promise<AccountView> {
  const { name, email, passwordHash } = person;
  const id = randomUUID();
  const inserted = await db
    .insertInto('person')
    .values({ id, name, email, keeper })
    .onConflict((c) => c.doNothing())
    .returning('id')
    .execute();
  if (inserted.length === 0) throw new Failure('email-in-use', { email });
  await db
    .insertInto('personCredential')
    .values({ id: randomUUID(), userId: id, accountId: id, providerId: 'credential', password: passwordHash })
    .execute();
  return { id, name, email, keeper };
}
