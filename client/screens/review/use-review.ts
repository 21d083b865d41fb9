import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';

export function useReview(house: string, covering: string) {
  return useQuery({
    queryKey: keys.review(house, covering),
    queryFn: ({ signal }) => call('readReview', { params: { covering }, signal }),
  });
}
