import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';

/** What lies over members and what has; `isAside`: the screen does without where it cannot be read. */
export function useProtections(house: string, isAside = true) {
  return useQuery({
    queryKey: keys.protections(house),
    ...(isAside ? { meta: { isAside: true } } : {}),
    queryFn: ({ signal }) => call('listProtections', { params: { house }, signal }),
  });
}
