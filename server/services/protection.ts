import type { ProtectionFacts, ProtectionView } from '#domain/contract/protection';
import type { AccountView } from '#domain/contract/views';
import { dayOf } from '#domain/record/zoned-day';
import { assertListed, assertZone } from './assert-listed.ts';
import { CLOCK_SLACK_MS } from './assert-past.ts';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import type { HouseWriting } from './record-store.ts';
import { assertRepeated, sameContent } from './same-content.ts';

interface Place {
  readonly house: string;
  readonly protection: string;
}

/** `laidAt` null: now. */
export async function layProtection(
  context: Context,
  account: AccountView,
  place: Place,
  said: Omit<ProtectionFacts, 'laidAt'> & { laidAt: string | null },
): Promise<ProtectionView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await writing.protection(place.protection);
    const facts = { ...said, laidAt: said.laidAt ?? before?.laidAt ?? context.now().toISOString() };
    if (before) {
      assertRepeated(place.protection, factsOf(before), facts);
      return before;
    }
    assertTimes(context, facts.name, facts.laidAt, null);
    await assertCanLie(writing, facts);
    const payload = { ...facts, protection: place.protection };
    await writing.say({ kind: 'protection.laid', version: 1, payload });
    return read(writing, place.protection);
  });
}

export async function changeProtection(
  context: Context,
  account: AccountView,
  place: Place,
  facts: ProtectionFacts,
): Promise<ProtectionView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await readStanding(writing, place.protection);
    if (sameContent(factsOf(before), facts)) return before;
    assertTimes(context, facts.name, facts.laidAt, before.lifted?.at ?? null);
    await assertCanLie(writing, facts);
    const payload = { ...facts, protection: place.protection };
    await writing.say({ kind: 'protection.changed', version: 1, payload });
    return read(writing, place.protection);
  });
}

/** `liftedAt` null: now. */
export async function liftProtection(
  context: Context,
  account: AccountView,
  place: Place,
  { liftedAt, note }: { liftedAt: string | null; note: string },
): Promise<ProtectionView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await readStanding(writing, place.protection);
    const { name, lifted, laidAt } = before;
    if (lifted && (liftedAt === null || liftedAt === lifted.at)) return before;
    if (lifted) throw new Failure('protection-lifted', { protection: name });
    const at = liftedAt ?? context.now().toISOString();
    assertTimes(context, name, laidAt, at);
    const payload = { protection: place.protection, liftedAt: at, note };
    await writing.say({ kind: 'protection.lifted', version: 1, payload });
    return read(writing, place.protection);
  });
}

export async function withdrawLifting(
  context: Context,
  account: AccountView,
  place: Place,
  reason: string,
): Promise<ProtectionView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const { name, lifted } = await readStanding(writing, place.protection);
    if (!lifted) throw new Failure('protection-not-lifted', { protection: name });
    const payload = { protection: place.protection, reason };
    await writing.say({ kind: 'protection.lifting-withdrawn', version: 1, payload });
    return read(writing, place.protection);
  });
}

/** It never lay there. */
export async function withdrawProtection(
  context: Context,
  account: AccountView,
  place: Place,
  reason: string,
): Promise<ProtectionView> {
  return context.store.write(place.house, speaker(account), async (writing) => {
    const before = await read(writing, place.protection);
    if (before.withdrawn) return before;
    const payload = { protection: place.protection, reason };
    await writing.say({ kind: 'protection.withdrawn', version: 1, payload });
    return read(writing, place.protection);
  });
}

async function read(writing: HouseWriting, id: string): Promise<ProtectionView> {
  const protection = await writing.protection(id);
  if (!protection) throw new Failure('not-found', { what: 'protection' });
  return protection;
}

async function readStanding(writing: HouseWriting, id: string): Promise<ProtectionView> {
  const protection = await read(writing, id);
  if (protection.withdrawn) throw new Failure('protection-withdrawn', { protection: protection.name });
  return protection;
}

/** To be lifted no sooner than on the day on which it was laid. */
async function assertLiftingDay(
  writing: HouseWriting,
  { name, laidAt, liftingDay }: Pick<ProtectionFacts, 'name' | 'laidAt' | 'liftingDay'>,
): Promise<void> {
  const zone = await writing.zone(writing.houseId);
  if (liftingDay !== null && liftingDay < dayOf(laidAt, zone))
    throw new Failure('protection-time-impossible', { protection: name, laidAt, liftedAt: liftingDay });
}

/** Neither laid nor lifted in the future, and not lifted before it was laid. */
function assertTimes(context: Context, name: string, laidAt: string, liftedAt: string | null): void {
  const latest = context.now().getTime() + CLOCK_SLACK_MS;
  const isToCome = Date.parse(liftedAt ?? laidAt) > latest;
  if (isToCome || (liftedAt !== null && liftedAt < laidAt))
    throw new Failure('protection-time-impossible', { protection: name, laidAt, liftedAt: liftedAt ?? '' });
}

async function assertCanLie(writing: HouseWriting, facts: ProtectionFacts): Promise<void> {
  const { zone, hides, except } = facts;
  await assertLiftingDay(writing, facts);
  await assertZone(writing, zone);
  await assertListed(writing, { hides, except });
}

function factsOf(view: ProtectionView): ProtectionFacts {
  const { name, what, zone, hides, except, laidAt, liftingDay, note } = view;
  const listed = hides.filter(({ byZone }) => !byZone).map(({ mark }) => mark);
  return { name, what, zone, hides: listed, except, laidAt, liftingDay, note };
}
