import { StampsView } from '../stamps.ts';
import { route, type Route } from './route.ts';

/** Time stamps of tree heads; the tokens themselves stand in the ledger. */
export const STAMP_ROUTES = {
  readStamps: route({
    method: 'GET',
    path: '/houses/{house}/stamps',
    summary: 'The last time stamp of a tree head (RFC 3161), and why there is no newer one.',
    access: 'read',
    status: 200,
    answer: StampsView,
  }),
} as const satisfies Record<string, Route>;
