import { queryOptions } from '@tanstack/react-query';
import { call } from './call.ts';
import { keys } from './keys.ts';

export const termsQuery = (house: string) =>
  queryOptions({
    queryKey: keys.terms(house),
    meta: { isAside: true },
    queryFn: ({ signal }) => call('listTerms', { params: { house }, signal }),
  });
