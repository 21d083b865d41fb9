import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';
import { hideByZones } from './zone-hides.ts';

export const projectTerm: Projector<'term.entered' | 'term.removed'> = {
  'term.entered': async (tx, { house, at, by, payload: { term, ...facts } }) => {
    const said = { facts: JSON.stringify(facts), saidAt: at, saidBy: jsonOrNull(by) };
    await tx
      .insertInto('term')
      .values({ houseId: house, id: term, ...said })
      .onConflict((c) => c.columns(['houseId', 'id']).doUpdateSet(said))
      .execute();
    await hideByZones(tx, house, {});
  },

  'term.removed': async (tx, { house, payload }) => {
    await tx.deleteFrom('term').where('houseId', '=', house).where('id', '=', payload.term).execute();
    await hideByZones(tx, house, {});
  },
};
