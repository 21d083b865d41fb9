import { useQuery, type UseQueryResult } from '@tanstack/react-query';
import type { PhotoDetailView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';

/** One photo with its tags; nothing is asked where there is no such photo. */
export function usePhoto(house: string, photo: string | null): UseQueryResult<PhotoDetailView> {
  return useQuery({
    queryKey: keys.photo(house, photo ?? ''),
    enabled: photo !== null && photo !== '',
    queryFn: ({ signal }) => call('readPhoto', { params: { photo: photo ?? '' }, signal }),
  });
}
