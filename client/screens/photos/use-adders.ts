import { useQuery } from '@tanstack/react-query';
import type { Answer } from '#domain/contract/routes';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';

type Adder = Answer<'listAdders'>['people'][number];

/** Who has added photos, whoever added most first; empty until it is known. */
export function useAdders(house: string, isAsked: boolean): readonly Adder[] {
  const query = useQuery({
    queryKey: keys.photos(house, { as: 'people' }),
    enabled: isAsked,
    queryFn: ({ signal }) => call('listAdders', { params: { house }, signal }),
  });
  return query.data?.people ?? [];
}
