import type { Context } from '../../services/context.ts';
import {
  changeProtection,
  layProtection,
  liftProtection,
  withdrawLifting,
  withdrawProtection,
} from '../../services/protection.ts';
import type { Handlers } from '../implement.ts';

export function protectionHandlers(context: Context): Handlers {
  return {
    layProtection: ({ account, house, body: { id, ...facts } }) =>
      layProtection(context, account, { house, protection: id }, facts),
    listProtections: async ({ house }) => ({ protections: await context.store.read.protections(house) }),
    changeProtection: ({ account, house, params, body }) =>
      changeProtection(context, account, { house, protection: params.protection }, body),
    withdrawProtection: ({ account, house, params, query }) =>
      withdrawProtection(context, account, { house, protection: params.protection }, query.reason),
    liftProtection: ({ account, house, params, body }) =>
      liftProtection(context, account, { house, protection: params.protection }, body),
    withdrawLifting: ({ account, house, params, query }) =>
      withdrawLifting(context, account, { house, protection: params.protection }, query.reason),
  };
}
