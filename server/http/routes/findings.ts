import type { Context } from '../../services/context.ts';
import { acceptFindings, listFindings, reopenFinding } from '../../services/findings.ts';
import type { Handlers } from '../implement.ts';

export function findingHandlers(context: Context): Handlers {
  return {
    listFindings: ({ house, query }) => listFindings(context, house, query),
    acceptFindings: async ({ account, house, body }) => ({
      findings: await acceptFindings(context, account, house, body),
    }),
    reopenFinding: ({ account, house, body }) => reopenFinding(context, account, house, body),
  };
}
