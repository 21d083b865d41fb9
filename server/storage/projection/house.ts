import type { HouseFacts } from '#domain/contract/shapes';
import { jsonOrNull } from './json.ts';
import { datePhotosAgain } from './photo.ts';
import type { Projector } from './projector.ts';
import { lieAnew } from './lie-anew.ts';
import { hideByZones } from './zone-hides.ts';
import { readDating, type Dating } from '../queries/houses.ts';

export const projectHouse: Projector<
  | 'house.created'
  | 'house.changed'
  | 'grid.stated'
  | 'requirements.stated'
  | 'release-rule.stated'
  | 'role.granted'
  | 'role.withdrawn'
  | 'password.link-made'
  | 'password.renewed'
  | 'note.written'
  | 'head.stamped'
> = {
  'house.created': async (tx, { house, at, payload }) => {
    await tx
      .insertInto('house')
      .values({ id: house, createdAt: at, ...columns(payload) })
      .execute();
  },

  'house.changed': async (tx, { house, payload }) => {
    const before = await readDating(tx, house);
    await tx.updateTable('house').set(columns(payload)).where('id', '=', house).execute();
    if (decidesOtherwise(before, payload)) await datePhotosAgain(tx, house);
  },

  'grid.stated': async (tx, { house, payload }) => {
    await tx
      .updateTable('house')
      .set({ grid: JSON.stringify(payload) })
      .where('id', '=', house)
      .execute();
    await lieAnew(tx, house, {});
  },

  'requirements.stated': async (tx, { house, payload: { rows } }) => {
    const requirements = JSON.stringify(rows);
    await tx.updateTable('house').set({ requirements }).where('id', '=', house).execute();
    await hideByZones(tx, house, {});
  },

  'release-rule.stated': async (tx, { house, payload: { fourEyes } }) => {
    await tx.updateTable('house').set({ fourEyes }).where('id', '=', house).execute();
  },

  'role.granted': async (tx, { house, payload: { person, role } }) => {
    await tx
      .insertInto('houseRole')
      .values({ houseId: house, personId: person.id, name: person.name, role })
      .onConflict((c) => c.columns(['houseId', 'personId']).doUpdateSet({ name: person.name, role }))
      .execute();
  },

  'role.withdrawn': async (tx, { house, at, payload: { person } }) => {
    await tx.deleteFrom('houseRole').where('houseId', '=', house).where('personId', '=', person.id).execute();
    // Not one that was made in a later role, when the tables are made anew.
    await tx
      .deleteFrom('calendarLink')
      .where('houseId', '=', house)
      .where('personId', '=', person.id)
      .where('createdAt', '<=', new Date(at))
      .execute();
  },

  // Passwords are no matter of a house; that one was set by a link is, and stands in the ledger.
  'password.link-made': () => Promise.resolve(),
  'password.renewed': () => Promise.resolve(),
  // The stamp stands in its entry; nothing that a screen reads of the house follows from it.
  'head.stamped': () => Promise.resolve(),

  'note.written': async (tx, { house, at, by, payload: { day, text } }) => {
    const row = { saidBy: jsonOrNull(by), saidAt: at, text };
    await tx
      .insertInto('dayNote')
      .values({ houseId: house, day, personId: by?.id ?? '', ...row })
      .onConflict((c) => c.columns(['houseId', 'day', 'personId']).doUpdateSet(row))
      .execute();
  },
};

function decidesOtherwise(before: Dating, { zone, firstDay, site }: HouseFacts): boolean {
  const isSameSite =
    before.site?.lat === site?.lat &&
    before.site?.lon === site?.lon &&
    before.site?.radiusM === site?.radiusM;
  return before.zone !== zone || before.firstDay !== firstDay || !isSameSite;
}

function columns(facts: HouseFacts) {
  return { name: facts.name, zone: facts.zone, firstDay: facts.firstDay, site: jsonOrNull(facts.site) };
}
