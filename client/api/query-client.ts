import { QueryCache, QueryClient } from '@tanstack/react-query';
import { OfflineError, isSignedOut } from './errors.ts';
import { sessionEnd } from './session-end.ts';
import { endSession } from './use-session.ts';

/** `networkMode: 'always'`: the server may stand on the site's own network while the internet is away. */
export function createQueryClient(): QueryClient {
  const client = new QueryClient({
    queryCache: new QueryCache({
      onError: (error, query) => {
        // Not while something is on screen: leaving it would lose what is being typed there.
        if (isSignedOut(error) && query.state.data === undefined && sessionEnd.state() === 'ended')
          endSession(client);
      },
    }),
    defaultOptions: {
      queries: {
        networkMode: 'always',
        staleTime: 10_000,
        retry: (failures, error) => error instanceof OfflineError && failures < 2,
      },
      mutations: { networkMode: 'always', retry: false },
    },
  });
  return client;
}
