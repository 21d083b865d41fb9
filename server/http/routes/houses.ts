import type { Context } from '../../services/context.ts';
import { Failure } from '../../services/failure.ts';
import { changeHouse, createHouse } from '../../services/houses.ts';
import { makePasswordLink } from '../../services/passwords.ts';
import { addPerson, removePerson } from '../../services/people.ts';
import { identified } from '../authentication.ts';
import { readStamps } from '../../services/stamp-heads.ts';
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
    houseEvents: async ({ account, house, req, res }) => {
      hub.stream(house, account.id, req, res);
      // Session or role may have ended while the request was on its way to the hub.
      const isStill = (await identified(context, req))?.id === account.id;
      if (!isStill || !(await read.roleIn(house, account.id))) res.end();
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

    endInvitation: async ({ house, params }) => {
      await context.accounts.endInvitation(house, params.invitation);
      return undefined;
    },
    makePasswordLink: ({ account, house, params }) =>
      makePasswordLink(context, account, house, params.person),

    readStamps: ({ house }) => readStamps(context, house),
    readLedger: async ({ house, query: { from, limit } }) => ({
      entries: await read.entries(house, from, limit),
      ...(await read.ledgerState(house)),
    }),
  };
}
