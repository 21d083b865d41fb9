import { useInfiniteQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import type { PhotoFilter } from './photo-filter.ts';

const PAGE = 120;

/**
 * The photos that fit, page by page, the newest day first. Those without a date are a list of their own,
 * so that they are at hand however many others there are.
 */
export function usePhotoPages(house: string, filter: PhotoFilter, part: 'dated' | 'undated') {
  return useInfiniteQuery({
    // Apart from lists that are loaded as one: their data has another shape.
    queryKey: keys.photos(house, { as: 'pages', part, ...filter }),
    // A photo without a date is of no day.
    enabled: part === 'dated' || filter.day === undefined,
    initialPageParam: null as string | null,
    queryFn: ({ pageParam, signal }) =>
      call('listPhotos', {
        params: { house },
        query: {
          ...filter,
          dated: part === 'dated' ? '1' : '0',
          order: 'newest-day',
          limit: PAGE,
          ...(pageParam === null ? {} : { after: pageParam }),
        },
        signal,
      }),
    getNextPageParam: ({ next }) => next,
  });
}

export type PhotoPages = ReturnType<typeof usePhotoPages>;

/** What has been loaded of a list, and how many there are. */
export function loaded({ data }: PhotoPages) {
  return { photos: data?.pages.flatMap(({ photos }) => photos) ?? [], total: data?.pages[0]?.total ?? 0 };
}
