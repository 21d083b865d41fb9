import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';

export function useReport(house: string) {
  return useQuery({
    queryKey: keys.report(house),
    queryFn: ({ signal }) => call('closingReport', { params: { house }, signal }),
  });
}
