import { useEffect, useRef } from 'react';
import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import type { PhotoFilter } from '../photos/photo-filter.ts';
import { neighboursIn, type Neighbours } from './neighbours.ts';

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
    queryFn: async ({ signal }) =>
      (await call('orderPhotos', { params: { house }, query: filter, signal })).photos,
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
