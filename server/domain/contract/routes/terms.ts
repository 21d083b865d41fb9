import { z } from 'zod';
import { line } from '../shapes.ts';
import { KindSightingView, TermFacts, TermView } from '../terms.ts';
import { route, type Route } from './route.ts';

/** The crew's own words for kinds of members, beside those that come with the program. */
export const TERM_ROUTES = {
  listTerms: route({
    method: 'GET',
    path: '/houses/{house}/terms',
    summary: 'The kinds that this crew has entered or renamed.',
    access: 'read',
    status: 200,
    answer: z.object({ terms: z.array(TermView) }),
  }),
  putTerm: route({
    method: 'PUT',
    path: '/houses/{house}/terms/{term}',
    summary: 'Enter, change or, with the id of a kind of the program, rename a kind in this house.',
    access: 'record',
    body: TermFacts,
    status: 200,
    answer: TermView,
  }),
  removeTerm: route({
    method: 'DELETE',
    path: '/houses/{house}/terms/{term}',
    summary: 'Remove a term, with the reason; a renamed kind gets its name back.',
    access: 'record',
    query: z.object({ reason: line(1000) }),
    status: 204,
  }),
  kindSightings: route({
    method: 'GET',
    path: '/houses/{house}/kinds/{kind}/photos',
    summary: 'Regions that show members of a kind, the newest photo first.',
    access: 'read',
    query: z.object({ limit: z.coerce.number().int().min(1).max(200).default(12) }),
    status: 200,
    answer: z.object({ sightings: z.array(KindSightingView), total: z.int() }),
  }),
} as const satisfies Record<string, Route>;
