import { QueryCache, QueryClient } from '@tanstack/react-query';
import { OfflineError, ProblemError } from './errors.ts';
import { keys } from './keys.ts';

/** `networkMode: 'always'`: the server may stand on the site's own network while the internet is away. */
export function createQueryClient(): QueryClient {
  const client = new QueryClient({
    queryCache: new QueryCache({
      onError: (error, query) => {
        // Not while something is on screen: leaving it would lose what is being typed there.
        if (isSignedOut(error) && query.state.data === undefined)
          client.setQueryData(keys.session, { account: null });
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

function isSignedOut(error: unknown): boolean {
  return error instanceof ProblemError && error.problem.code === 'not-signed-in';
}
