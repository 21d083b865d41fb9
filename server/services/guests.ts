import type { GuestRequest, GuestShows, GuestView } from '#domain/contract/guests';
import type { AccountView } from '#domain/contract/views';
import { addDays } from './add-days.ts';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import type { Guest, HouseWriting } from './record-store.ts';
import { assertRepeated } from './same-content.ts';

/** Links that hold, with when they were last used; of a restored house also those that open nothing here. */
export async function listGuests(context: Context, house: string): Promise<GuestView[]> {
  const guests = await context.store.read.guests(house, context.now());
  const uses = await context.accounts.guestUses(guests.map(({ id }) => id));
  return guests.map((guest) =>
    toView(guest, { lastUsedAt: uses.get(guest.id) ?? null, opensHere: uses.has(guest.id) }),
  );
}

/**
 * Lets somebody without an account read one covering or one member. The secret is made after the statement, so
 * that nothing is ever shown of which the ledger does not say to whom.
 */
export async function admitGuest(
  context: Context,
  owner: AccountView,
  house: string,
  { id, shows, label, days }: GuestRequest,
): Promise<{ guest: GuestView; secret: string }> {
  const until = addDays(context.now(), days).toISOString();
  const guest = await context.store.write(house, speaker(owner), async (writing) => {
    const before = await writing.guest(id);
    if (before) {
      assertSameGuest(before, { house, shows, label });
      return before;
    }
    await assertThere(writing, shows);
    await writing.say({ kind: 'guest.admitted', version: 1, payload: { guest: id, shows, label, until } });
    return required(writing, id);
  });
  return {
    guest: toView(guest, { lastUsedAt: null, opensHere: true }),
    secret: await context.accounts.makeGuestSecret(id),
  };
}

export async function endGuest(
  context: Context,
  owner: AccountView,
  { house, guest }: { house: string; guest: string },
  reason: string,
): Promise<void> {
  await context.store.write(house, speaker(owner), async (writing) => {
    const before = await required(writing, guest);
    if (before.house !== house) throw new Failure('not-found', { what: 'guest' });
    if (before.ended) return;
    await writing.say({ kind: 'guest.ended', version: 1, payload: { guest, reason } });
  });
}

/** Once ended, a guest gets no other secret. */
function assertSameGuest(
  before: Guest,
  { house, shows, label }: { house: string; shows: GuestShows; label: string },
): void {
  if (before.house !== house || before.ended)
    throw new Failure('id-used-for-something-else', { id: before.id });
  assertRepeated(before.id, { shows: before.shows, label: before.label }, { shows, label });
}

async function assertThere(writing: HouseWriting, shows: GuestShows): Promise<void> {
  if ('mark' in shows) {
    if (!(await writing.member(writing.houseId, shows.mark)))
      throw new Failure('not-found', { what: 'member', mark: shows.mark });
    return;
  }
  const isThere = (await writing.coverings(writing.houseId)).some(({ id }) => id === shows.covering);
  if (!isThere) throw new Failure('not-found', { what: 'covering' });
}

async function required(writing: HouseWriting, id: string): Promise<Guest> {
  const guest = await writing.guest(id);
  if (!guest) throw new Failure('not-found', { what: 'guest' });
  return guest;
}

function toView(
  { id, shows, name, label, by, admittedAt, until }: Guest,
  secret: Pick<GuestView, 'lastUsedAt' | 'opensHere'>,
): GuestView {
  return { id, shows, name, label, by: by && by.name, admittedAt, until, ...secret };
}
