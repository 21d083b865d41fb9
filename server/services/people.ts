import type { Role } from '#domain/contract/shapes';
import type { AccountView, LinkView, PersonInHouseView } from '#domain/contract/views';
import type { NewPerson } from './accounts.ts';
import { addDays } from './add-days.ts';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import { assertLinkHolds } from './passwords.ts';
import type { HouseWriting } from './record-store.ts';

/** Gives a role to an account, or, where there is none yet, makes the one-time link to hand on. */
export async function addPerson(
  context: Context,
  owner: AccountView,
  house: string,
  { email, role, days }: { email: string; role: Role; days: number },
): Promise<{ person: PersonInHouseView | null; link: string | null }> {
  const account = await context.accounts.findByEmail(email);
  if (!account) {
    const link = await context.accounts.makeLink({
      ...{ purpose: 'join-house', email: email.toLowerCase(), houseId: house, role, personId: null },
      ...{ madeBy: speaker(owner), until: addDays(context.now(), days) },
    });
    return { person: null, link };
  }
  await context.store.write(house, speaker(owner), (writing) => grant(writing, account, role));
  return { person: { ...speaker(account), role, email: account.email }, link: null };
}

export async function removePerson(
  context: Context,
  owner: AccountView,
  house: string,
  person: string,
): Promise<void> {
  await context.store.write(house, speaker(owner), async (writing) => {
    const people = await writing.people(house);
    const leaving = people.find(({ id }) => id === person);
    if (!leaving) return;
    await assertOwnerStays(writing, person, null);
    const payload = { person: { id: leaving.id, name: leaving.name } };
    await writing.say({ kind: 'role.withdrawn', version: 1, payload });
  });
}

/** What a one-time link is for, and by whom. */
export async function readLink(context: Context, secret: string): Promise<LinkView> {
  const link = await context.accounts.readLink(secret);
  await assertLinkHolds(context, link);
  const { purpose, email, house, role, madeBy, until } = link;
  return { purpose, email, house, role, by: madeBy && madeBy.name, until };
}

/** Makes the account that a one-time link stands for, with what comes with it: a role is the word of who made the link. */
export async function enterByLink(
  context: Context,
  secret: string,
  person: NewPerson,
): Promise<{ house: string | null }> {
  const { account, link } = await context.accounts.createByLink(secret, person);
  if (link.purpose === 'first-account') await adoptHouses(context, account);
  const { houseId, role, madeBy } = link;
  if (houseId && role) await context.store.write(houseId, madeBy, (writing) => grant(writing, account, role));
  return { house: houseId };
}

/**
 * A house whose owners' accounts are all gone, as after a lost database, goes to the keeper of the
 * instance: nobody else could ever open it again. The ledger says that the machine did it.
 */
export async function adoptHouses(context: Context, keeper: AccountView): Promise<void> {
  for (const house of await context.store.read.housesWithoutOwner())
    await context.store.write(house, null, (writing) => grant(writing, keeper, 'owner'));
}

async function grant(writing: HouseWriting, account: AccountView, role: Role): Promise<void> {
  if ((await writing.roleIn(writing.houseId, account.id)) === role) return;
  await assertOwnerStays(writing, account.id, role);
  await writing.say({ kind: 'role.granted', version: 1, payload: { person: speaker(account), role } });
}

async function assertOwnerStays(writing: HouseWriting, person: string, role: Role | null): Promise<void> {
  const owners = (await writing.people(writing.houseId)).filter((p) => p.role === 'owner');
  const isOnly = owners.length === 1 && owners[0]?.id === person;
  if (isOnly && role !== 'owner') throw new Failure('last-owner');
}
