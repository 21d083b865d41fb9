import { useQuery } from '@tanstack/react-query';
import { call } from './call.ts';
import { keys } from './keys.ts';

/** Who is signed in; `data.account` is null when nobody is. */
export function useSession() {
  return useQuery({
    queryKey: keys.session,
    queryFn: ({ signal }) => call('readSession', { signal }),
    staleTime: 60_000,
  });
}
