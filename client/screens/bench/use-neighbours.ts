import { useQuery, useQueryClient, type InfiniteData } from '@tanstack/react-query';
import type { Answer } from '#domain/contract/routes';
import { call } from '../../api/call.ts';
import { photoPagesKey } from '../photos/use-photo-pages.ts';
import type { PhotoFilter } from '../photos/photo-filter.ts';
import { neighboursIn, type Neighbours } from './neighbours.ts';

const PAGE = 1000;
const KEPT_MS = 10 * 60_000;

/**
 * The photos before and after this one in the list that one came from. The order is not refreshed while
 * one walks through it: with "only without a tag" each photo would leave the list under one's hands.
 */
export function useNeighbours(house: string, photo: string, filter: PhotoFilter): Neighbours | null {
  const client = useQueryClient();
  const order = useQuery({
    queryKey: ['photo-order', house, filter],
    staleTime: KEPT_MS,
    gcTime: KEPT_MS,
    initialData: () => {
      const pages = client.getQueryData<InfiniteData<Answer<'listPhotos'>>>(
        photoPagesKey(house, filter),
      )?.pages;
      return pages?.at(-1)?.next === null ? idsOf(pages) : undefined;
    },
    queryFn: ({ signal }) => readOrder(house, filter, signal),
  });
  return order.data ? neighboursIn(order.data, photo) : null;
}

const idsOf = (pages: readonly Answer<'listPhotos'>[]) =>
  pages.flatMap(({ photos }) => photos.map(({ id }) => id));

async function readOrder(house: string, filter: PhotoFilter, signal: AbortSignal): Promise<string[]> {
  const ids: string[] = [];
  let after: string | null = null;
  do {
    const page: Answer<'listPhotos'> = await call('listPhotos', {
      params: { house },
      query: { ...filter, limit: PAGE, ...(after === null ? {} : { after }) },
      signal,
    });
    ids.push(...idsOf([page]));
    after = page.next;
  } while (after !== null);
  return ids;
}
