import { SITE_RADIUS, type HouseChanges, type HouseFacts, type Site } from '#domain/contract/shapes';
import type { AccountView, HouseView } from '#domain/contract/views';
import { isKnownZone } from '#domain/record/zoned-day';
import { speaker, type Context } from './context.ts';
import { Failure } from './failure.ts';
import { assertRepeated, sameContent } from './same-content.ts';

/** Opens the record of a house; whoever opens it is its owner. */
export async function createHouse(
  context: Context,
  account: AccountView,
  id: string,
  facts: HouseFacts,
): Promise<HouseView> {
  assertZone(facts.zone);
  const by = speaker(account);
  return context.store.open(id, by, async (writing, isNew) => {
    if (isNew) {
      await writing.say({ kind: 'house.created', version: 2, payload: facts });
      await writing.say({ kind: 'role.granted', version: 1, payload: { person: by, role: 'owner' } });
    }
    const house = await writing.house(id, account.id);
    // Somebody else's house must look like an id that cannot be used, not like a house.
    if (!house) throw new Failure('id-used-for-something-else', { id });
    assertRepeated(id, factsOf(house), facts);
    return house;
  });
}

export async function changeHouse(
  context: Context,
  account: AccountView,
  id: string,
  changes: HouseChanges,
): Promise<HouseView> {
  if (changes.zone !== undefined) assertZone(changes.zone);
  return context.store.write(id, speaker(account), async (writing) => {
    const before = await required(writing.house(id, account.id));
    const payload = { ...factsOf(before), ...definedOf(changes), site: siteAfter(before.site, changes.site) };
    if (!sameContent(factsOf(before), payload))
      await writing.say({ kind: 'house.changed', version: 2, payload });
    return required(writing.house(id, account.id));
  });
}

async function required(reading: Promise<HouseView | undefined>): Promise<HouseView> {
  const house = await reading;
  if (!house) throw new Failure('not-found', { what: 'house' });
  return house;
}

function factsOf({ name, zone, firstDay, site }: HouseView): HouseFacts {
  return { name, zone, firstDay, site };
}

type Plain = Omit<HouseFacts, 'site'>;

function definedOf({ site: _, ...changes }: HouseChanges): Partial<Plain> {
  return Object.fromEntries(Object.entries(changes).filter(([, value]) => value !== undefined));
}

/** Whoever moves the middle without a word about the radius keeps it. */
function siteAfter(before: Site | null, change: HouseChanges['site']): Site | null {
  if (!change) return change === undefined ? before : null;
  return { ...change, radiusM: change.radiusM ?? before?.radiusM ?? SITE_RADIUS.default };
}

function assertZone(zone: string): void {
  if (!isKnownZone(zone)) throw new Failure('unknown-zone', { zone });
}
