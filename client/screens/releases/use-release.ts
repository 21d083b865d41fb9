import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';

export function useRelease(house: string, release: string) {
  return useQuery({
    queryKey: keys.release(house, release),
    queryFn: ({ signal }) => call('readRelease', { params: { release }, signal }),
  });
}
