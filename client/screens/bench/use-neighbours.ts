import { useEffect, useRef } from 'react';
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
  const found = order.data ? neighboursIn(order.data, photo) : null;
  useAskedAgainFor(photo, order.data !== undefined && found === null, order.refetch);
  return found;
}

/** A photo that the kept order lacks was added since: it is read anew, once for each such photo. */
function useAskedAgainFor(photo: string, isLacking: boolean, ask: () => Promise<unknown>): void {
  const asked = useRef('');
  useEffect(() => {
    if (!isLacking || asked.current === photo) return;
    asked.current = photo;
    void ask();
  }, [photo, isLacking, ask]);
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
