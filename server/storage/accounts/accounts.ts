import type { AccountView } from '#domain/contract/views';
import type { Accounts, SignedIn } from '../../services/accounts.ts';
import { Failure } from '../../services/failure.ts';
import type { Db } from '../open-database.ts';
import type { Row } from '../tables.ts';
import { createByLink, hashed, insertPerson } from './create-account.ts';
import { guestOf, guestUses, makeGuestSecret, noteGuest } from './guest-secrets.ts';
import { endInvitation, makeLink, readInvited, readLink } from './links.ts';
import { changePassword, renewPassword } from './passwords.ts';
import { announceEnd, endSessions, listSessions } from './sessions.ts';
import type { SignInLibrary } from './sign-in-library.ts';
import { createToken, endToken, listTokens, personOfToken } from './tokens.ts';

export function accounts(db: Db, library: SignInLibrary, now: () => Date): Accounts {
  return {
    identify: (headers) => identify(db, library, now, headers),
    signIn: (email, password, headers) => signIn(db, library, email, password, headers),
    signOut: (headers) => signOut(db, library, headers),
    sessions: async (person, headers) =>
      listSessions(db, now(), person, (await readSession(library, headers))?.id ?? null),
    endSessions: (person, also) => db.transaction().execute((tx) => endSessions(tx, person, also)),
    changePassword: (person, change) => changePassword(db, library, person, change),
    renewPassword: (secret, password) => renewPassword(db, library, now(), secret, password),
    create: async (person) => insertPerson(db, await hashed(library, person), person.keeper),
    createByLink: (secret, person) => createByLink(db, library, now(), secret, person),
    find: (person) => findAccount(db, person),
    findByEmail: (email) => findByEmail(db, email),
    anyExists: async () => (await db.selectFrom('person').select('id').limit(1).execute()).length > 0,
    keeper: () => findKeeper(db),
    makeLink: (link) => makeLink(db, now(), link),
    readLink: (secret) => readLink(db, now(), secret),
    invited: (house) => readInvited(db, now(), house),
    endInvitation: (house, invitation) => endInvitation(db, house, invitation),
    makeGuestSecret: (guest) => makeGuestSecret(db, guest),
    guestOf: (secret) => guestOf(db, secret),
    noteGuest: (secret) => noteGuest(db, now(), secret),
    guestUses: (guests) => guestUses(db, guests),
    tokens: (person) => listTokens(db, person),
    createToken: (person, token) => createToken(db, now(), person, token),
    endToken: (person, token) => endToken(db, person, token),
  };
}

async function identify(
  db: Db,
  library: SignInLibrary,
  now: () => Date,
  headers: Headers,
): ReturnType<Accounts['identify']> {
  const bearer = /^Bearer (\S+)$/i.exec(headers.get('authorization') ?? '')?.[1];
  if (bearer !== undefined) {
    const person = await personOfToken(db, now(), bearer);
    return person ? { account: toAccount(person), by: 'token' } : null;
  }
  const session = await readSession(library, headers);
  const account = session && (await findAccount(db, session.userId));
  return account ? { account, by: 'session' } : null;
}

async function readSession(library: SignInLibrary, headers: Headers) {
  if (!headers.has('cookie')) return null;
  return (await library.api.getSession({ headers }))?.session ?? null;
}

/** A session that the browser brought ends: what was known of it before opens nothing afterwards. */
async function signIn(
  db: Db,
  library: SignInLibrary,
  email: string,
  password: string,
  headers: Headers,
): Promise<SignedIn> {
  const before = await readSession(library, headers);
  const response = await library.api.signInEmail({ body: { email, password }, headers, asResponse: true });
  if (!response.ok) throw new Failure('wrong-credentials');
  const account = await findByEmail(db, email);
  if (!account) throw new Failure('wrong-credentials');
  if (before) await db.deleteFrom('personSession').where('id', '=', before.id).execute();
  return { account, cookies: cookiesOf(response) };
}

async function signOut(db: Db, library: SignInLibrary, headers: Headers): Promise<string[]> {
  const before = await readSession(library, headers);
  const response = await library.api.signOut({ headers, asResponse: true });
  if (before) await announceEnd(db, before.userId);
  return cookiesOf(response);
}

async function findAccount(db: Db, person: string): Promise<AccountView | undefined> {
  const row = await db.selectFrom('person').selectAll().where('id', '=', person).executeTakeFirst();
  return row && toAccount(row);
}

async function findByEmail(db: Db, email: string): Promise<AccountView | undefined> {
  const row = await db
    .selectFrom('person')
    .selectAll()
    .where('email', '=', email.toLowerCase())
    .executeTakeFirst();
  return row && toAccount(row);
}

/** Of several the first that was made. */
async function findKeeper(db: Db): Promise<AccountView | undefined> {
  const row = await db
    .selectFrom('person')
    .selectAll()
    .orderBy('keeper', 'desc')
    .orderBy('createdAt')
    .executeTakeFirst();
  return row && toAccount(row);
}

function toAccount({ id, name, email, keeper }: Row<'person'>): AccountView {
  return { id, name, email, keeper };
}

function cookiesOf(response: Response): string[] {
  return response.headers.getSetCookie();
}
