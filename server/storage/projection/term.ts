import { jsonOrNull } from './json.ts';
import type { Projector } from './projector.ts';
import { lieAnew } from './lie-anew.ts';

export const projectTerm: Projector<'term.entered' | 'term.removed'> = {
  'term.entered': async (tx, { house, at, by, payload: { term, ...facts } }) => {
    const said = { facts: JSON.stringify(facts), saidAt: at, saidBy: jsonOrNull(by) };
    await tx
      .insertInto('term')
      .values({ houseId: house, id: term, ...said })
      .onConflict((c) => c.columns(['houseId', 'id']).doUpdateSet(said))
      .execute();
    await lieAnew(tx, house, {});
  },

  'term.removed': async (tx, { house, payload }) => {
    await tx.deleteFrom('term').where('houseId', '=', house).where('id', '=', payload.term).execute();
    await lieAnew(tx, house, {});
  },
};
