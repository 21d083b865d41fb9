import { TermId } from '#domain/contract/terms';
import type { Context } from '../../services/context.ts';
import { Failure } from '../../services/failure.ts';
import { listTerms, putTerm, readKindSightings, removeTerm } from '../../services/terms.ts';
import type { Handlers } from '../implement.ts';

export function termHandlers(context: Context): Handlers {
  return {
    listTerms: async ({ house }) => ({ terms: await listTerms(context, house) }),
    putTerm: ({ account, house, params, body }) =>
      putTerm(context, account, { house, term: termOf(params.term) }, body),
    removeTerm: async ({ account, house, params, query }) => {
      await removeTerm(context, account, { house, term: termOf(params.term) }, query.reason);
      return undefined;
    },
    kindSightings: ({ house, params, query }) =>
      readKindSightings(context, house, termOf(params.kind), query.limit),
  };
}

function termOf(text: string): string {
  const parsed = TermId.safeParse(text);
  if (!parsed.success) throw new Failure('not-found', { what: 'term' });
  return parsed.data;
}
