import { QueryCache, QueryClient } from '@tanstack/react-query';
import { OfflineError, isSignedOut } from './errors.ts';
import { sessionEnd } from './session-end.ts';
import { endSession } from './use-session.ts';

/** For so long what was read is shown again without being read again. */
export const FRESH_MS = 10_000;

/**
 * What is read aside, and nobody waits for, leads nobody away: `meta: { isAside: true }`.
 * `networkMode: 'always'`: the server may stand on the site's own network while the internet is away.
 */
export function createQueryClient(): QueryClient {
  const client = new QueryClient({
    queryCache: new QueryCache({
      onError: (error, query) => {
        // Not while something is on screen: leaving it would lose what is being typed there.
        const isNeeded = query.state.data === undefined && query.meta?.['isAside'] !== true;
        if (isSignedOut(error) && isNeeded && sessionEnd.state() === 'ended') endSession(client);
      },
    }),
    defaultOptions: {
      queries: {
        networkMode: 'always',
        staleTime: FRESH_MS,
        retry: (failures, error) => error instanceof OfflineError && failures < 2,
      },
      mutations: { networkMode: 'always', retry: false },
    },
  });
  return client;
}
