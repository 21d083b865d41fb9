import { PASSWORD_LINK_DAYS } from '#domain/contract/link-days';
import type { Person } from '#domain/contract/shapes';
import type { AccountView } from '#domain/contract/views';
import type { ReadLink } from './accounts.ts';
import { addDays } from './add-days.ts';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';

interface PasswordLink {
  readonly link: string;
  readonly until: string;
}

/** By the keeper of a record, for somebody who works on it and has lost the password. */
export async function makePasswordLink(
  context: Context,
  owner: AccountView,
  house: string,
  person: string,
): Promise<PasswordLink> {
  const account = await context.accounts.find(person);
  if (!account || !(await context.store.read.roleIn(house, person)))
    throw new Failure('not-found', { what: 'person' });
  if (!(await mayRenew(context, owner.id, account))) throw new Failure('password-link-not-yours');
  return make(context, account, { houseId: house, madeBy: speaker(owner) });
}

/** By whoever runs the program, for any account. Undefined where nobody has this e-mail. */
export async function makeKeepersPasswordLink(
  context: Context,
  email: string,
): Promise<PasswordLink | undefined> {
  const account = await context.accounts.findByEmail(email);
  return account && make(context, account, { houseId: null, madeBy: null });
}

/** A link for a new password may since have become one into other people's houses. */
export async function assertLinkHolds(context: Context, link: ReadLink): Promise<void> {
  const { purpose, personId, houseId, madeBy } = link;
  if (purpose !== 'new-password' || madeBy === null) return;
  const account = personId === null ? undefined : await context.accounts.find(personId);
  const works = account && houseId && (await context.store.read.roleIn(houseId, account.id));
  if (!works || !(await mayRenew(context, madeBy.id, account))) throw new Failure('link-used-or-expired');
}

/** Sets the password that a one-time link stands for. Said first: no password is ever set that no ledger tells of. */
export async function renewPassword(
  context: Context,
  secret: string,
  password: string,
): Promise<AccountView> {
  const link = await context.accounts.readLink(secret);
  await assertLinkHolds(context, link);
  const account = link.personId === null ? undefined : await context.accounts.find(link.personId);
  if (!account) throw new Failure('link-used-or-expired');
  const payload = { person: speaker(account), linkBy: link.madeBy };
  for (const house of await housesOf(context, account))
    await context.store.write(house, null, (writing) =>
      writing.say({ kind: 'password.renewed', version: 1, payload }),
    );
  await context.accounts.renewPassword(secret, password);
  return account;
}

async function make(
  context: Context,
  account: AccountView,
  from: { houseId: string | null; madeBy: Person | null },
): Promise<PasswordLink> {
  const until = addDays(context.now(), PASSWORD_LINK_DAYS);
  const payload = { person: speaker(account), until: until.toISOString() };
  for (const house of await housesOf(context, account))
    await context.store.write(house, from.madeBy, (writing) =>
      writing.say({ kind: 'password.link-made', version: 1, payload }),
    );
  const whose = { personId: account.id, email: account.email, role: null };
  const link = await context.accounts.makeLink({ purpose: 'new-password', ...whose, ...from, until });
  return { link, until: until.toISOString() };
}

/**
 * Whoever holds such a link can speak as the other. So the keeper of a record makes it only where that opens no
 * house that is not theirs as well: not for who works elsewhere too, not for the keeper of the instance, and not
 * for themselves, since a window that was left open must not become a password.
 */
async function mayRenew(context: Context, maker: string, account: AccountView): Promise<boolean> {
  if (account.keeper || account.id === maker) return false;
  for (const house of await housesOf(context, account))
    if ((await context.store.read.roleIn(house, maker)) !== 'owner') return false;
  return true;
}

async function housesOf({ store }: Context, { id }: AccountView): Promise<string[]> {
  return (await store.read.houses(id)).map((house) => house.id);
}
