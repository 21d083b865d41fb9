import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';

export function useCoverings(house: string) {
  return useQuery({
    queryKey: keys.coverings(house),
    queryFn: ({ signal }) => call('listCoverings', { params: { house }, signal }),
  });
}
