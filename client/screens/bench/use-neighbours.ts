import { useQuery } from '@tanstack/react-query';
import type { Answer } from '#domain/contract/routes';
import { call } from '../../api/call.ts';
import type { PhotoFilter } from '../photos/photo-filter.ts';
import { neighboursIn, type Neighbours } from './neighbours.ts';

const PAGE = 1000;
const KEPT_MS = 10 * 60_000;

/**
 * The photos before and after this one in order of capture, among those that one came from. The order is
 * not refreshed while one walks through it: with "only without a tag" each photo would leave it under
 * one's hands.
 */
export function useNeighbours(house: string, photo: string, filter: PhotoFilter): Neighbours | null {
  const order = useQuery({
    queryKey: ['photo-order', house, filter],
    staleTime: KEPT_MS,
    gcTime: KEPT_MS,
    queryFn: ({ signal }) => readOrder(house, filter, signal),
  });
  return order.data ? neighboursIn(order.data, photo) : null;
}

async function readOrder(house: string, filter: PhotoFilter, signal: AbortSignal): Promise<string[]> {
  const ids: string[] = [];
  let after: string | null = null;
  do {
    const page: Answer<'listPhotos'> = await call('listPhotos', {
      params: { house },
      query: { ...filter, limit: PAGE, ...(after === null ? {} : { after }) },
      signal,
    });
    ids.push(...page.photos.map(({ id }) => id));
    after = page.next;
  } while (after !== null);
  return ids;
}
