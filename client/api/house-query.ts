import { queryOptions } from '@tanstack/react-query';
import { call } from './call.ts';
import { keys } from './keys.ts';

export const houseQuery = (house: string) =>
  queryOptions({
    queryKey: keys.house(house),
    queryFn: ({ signal }) => call('readHouse', { params: { house }, signal }),
  });
