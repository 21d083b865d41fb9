import { useInfiniteQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import type { PhotoFilter } from './photo-filter.ts';

const PAGE = 120;

/** The key is apart from lists that are loaded as one: their data has another shape. */
export const photoPagesKey = (house: string, filter: PhotoFilter) =>
  keys.photos(house, { as: 'pages', ...filter });

/** The photos that fit, page by page. */
export function usePhotoPages(house: string, filter: PhotoFilter) {
  return useInfiniteQuery({
    queryKey: photoPagesKey(house, filter),
    initialPageParam: null as string | null,
    queryFn: ({ pageParam, signal }) =>
      call('listPhotos', {
        params: { house },
        query: { ...filter, limit: PAGE, ...(pageParam === null ? {} : { after: pageParam }) },
        signal,
      }),
    getNextPageParam: ({ next }) => next,
  });
}
