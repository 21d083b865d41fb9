import type { Context } from '../../services/context.ts';
import { Failure } from '../../services/failure.ts';
import { changeHouse, createHouse } from '../../services/houses.ts';
import { addPerson, removePerson } from '../../services/people.ts';
import type { EventHub } from '../event-hub.ts';
import type { Handlers } from '../implement.ts';

/** With more than so many everything is read anew. */
const NAMED_CHANGES = 100;

export function houseHandlers(context: Context, hub: EventHub): Handlers {
  const { read } = context.store;
  return {
    createHouse: ({ account, body: { id, ...facts } }) => createHouse(context, account, id, facts),
    listHouses: async ({ account }) => ({ houses: await read.houses(account.id) }),
    readHouse: async ({ account, house }) => {
      const view = await read.house(house, account.id);
      if (!view) throw new Failure('not-found', { what: 'house' });
      return view;
    },
    changeHouse: ({ account, house, body }) => changeHouse(context, account, house, body),
    houseEvents: async ({ house, req, res }) => {
      hub.stream(house, req, res);
      return undefined;
    },
    houseChanges: async ({ house, query: { after } }) => {
      const state = await read.houseState(house);
      const isKnown = after !== undefined && state.size - after <= NAMED_CHANGES;
      return {
        ...state,
        statements: isKnown ? await read.statementsFrom(house, after, NAMED_CHANGES) : null,
      };
    },

    listPeople: async ({ house }) => ({
      people: await read.people(house),
      invited: await context.accounts.invited(house),
    }),
    addPerson: ({ account, house, body }) => addPerson(context, account, house, body),
    removePerson: async ({ account, house, params }) => {
      await removePerson(context, account, house, params.person);
      return undefined;
    },

    readLedger: async ({ house, query: { from, limit } }) => ({
      entries: await read.entries(house, from, limit),
      ...(await read.ledgerState(house)),
    }),
  };
}
