import type { PasswordChange } from '../../services/accounts.ts';
import { Failure } from '../../services/failure.ts';
import type { Db } from '../open-database.ts';
import { readLink, spendLink } from './links.ts';
import { endSessions } from './sessions.ts';
import type { SignInLibrary } from './sign-in-library.ts';

const KIND = 'credential';

export async function changePassword(
  db: Db,
  library: SignInLibrary,
  person: string,
  { present, password, tokens }: PasswordChange,
): Promise<void> {
  const hashing = (await library.$context).password;
  const row = await db
    .selectFrom('personCredential')
    .select('password')
    .where('userId', '=', person)
    .where('providerId', '=', KIND)
    .executeTakeFirst();
  if (!row || !(await hashing.verify({ hash: row.password, password: present })))
    throw new Failure('present-password-wrong');
  const hash = await hashing.hash(password);
  await db.transaction().execute((tx) => setPassword(tx, person, hash, { tokens }));
}

/** By a one-time link: the link is spent and the password set, both or neither. */
export async function renewPassword(
  db: Db,
  library: SignInLibrary,
  now: Date,
  secret: string,
  password: string,
): Promise<void> {
  const { personId } = await readLink(db, now, secret);
  if (personId === null) throw new Failure('link-used-or-expired');
  const hash = await (await library.$context).password.hash(password);
  await db.transaction().execute(async (tx) => {
    await spendLink(tx, now, secret);
    await setPassword(tx, personId, hash, { tokens: true });
  });
}

/** Whoever was signed in by the old one is so no more, and no link renews what is new. */
async function setPassword(tx: Db, person: string, hash: string, also: { tokens: boolean }): Promise<void> {
  await tx
    .updateTable('personCredential')
    .set({ password: hash })
    .where('userId', '=', person)
    .where('providerId', '=', KIND)
    .execute();
  await tx.deleteFrom('accountLink').where('personId', '=', person).where('usedAt', 'is', null).execute();
  await endSessions(tx, person, also);
}
