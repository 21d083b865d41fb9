import type { AccountView } from '#domain/contract/views';
import type { Accounts, SignedIn } from '../../services/accounts.ts';
import { Failure } from '../../services/failure.ts';
import type { Db } from '../open-database.ts';
import type { Row } from '../tables.ts';
import { createByLink, hashed, insertPerson } from './create-account.ts';
import { makeLink, readInvited, readLink } from './links.ts';
import type { SignInLibrary } from './sign-in-library.ts';
import { createToken, endToken, listTokens, personOfToken } from './tokens.ts';

export function accounts(db: Db, library: SignInLibrary, now: () => Date): Accounts {
  return {
    identify: (headers) => identify(db, library, now, headers),
    signIn: (email, password, headers) => signIn(db, library, email, password, headers),
    signOut: async (headers) => cookiesOf(await library.api.signOut({ headers, asResponse: true })),
    create: async (person) => insertPerson(db, await hashed(library, person), person.keeper),
    createByLink: (secret, person) => createByLink(db, library, now(), secret, person),
    findByEmail: (email) => findByEmail(db, email),
    anyExists: async () => (await db.selectFrom('person').select('id').limit(1).execute()).length > 0,
    keeper: () => findKeeper(db),
    makeLink: (link) => makeLink(db, now(), link),
    readLink: (secret) => readLink(db, now(), secret),
    invited: (house) => readInvited(db, now(), house),
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
  if (!headers.has('cookie')) return null;
  const session = await library.api.getSession({ headers });
  if (!session) return null;
  const person = await db
    .selectFrom('person')
    .selectAll()
    .where('id', '=', session.user.id)
    .executeTakeFirst();
  return person ? { account: toAccount(person), by: 'session' } : null;
}

async function signIn(
  db: Db,
  library: SignInLibrary,
  email: string,
  password: string,
  headers: Headers,
): Promise<SignedIn> {
  const response = await library.api.signInEmail({ body: { email, password }, headers, asResponse: true });
  if (!response.ok) throw new Failure('wrong-credentials');
  const account = await findByEmail(db, email);
  if (!account) throw new Failure('wrong-credentials');
  return { account, cookies: cookiesOf(response) };
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
