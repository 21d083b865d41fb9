import { useQueries } from '@tanstack/react-query';
import type { PhotoView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import type { PhotoFilter } from './photo-filter.ts';
import type { Slot } from './wall-layout.ts';
import { pagesOf, PAGE, type Part, type WallPage } from './wall-pages.ts';

const KEPT_MS = 5 * 60_000;

export interface WallPhotos {
  /** Undefined while it is not known yet. */
  readonly at: (slot: Slot) => PhotoView | undefined;
  /** Where a photo that stood at `slot` stands now: others of its day may have come before it. */
  readonly find: (id: string, slot: Slot) => Slot | undefined;
  readonly error: Error | null;
  readonly retry: () => void;
}

/**
 * The photos of what is drawn. A page is a part of one day: photos that others add to another day move
 * none of it, so what one looks at stays right while the list grows. Pages by a count from the beginning
 * would all change with each new photo, since the newest day comes first.
 */
export function useWallPhotos(
  house: string,
  filter: PhotoFilter,
  parts: readonly Part[],
  isRushing: boolean,
): WallPhotos {
  const pages = pagesOf(parts);
  const queries = useQueries({
    queries: pages.map(({ day, page }) => ({
      queryKey: keys.photos(house, { as: 'page', ...filter, day, page }),
      // What others say marks it as old; until then it stays as it is while one scrolls back and forth.
      staleTime: KEPT_MS,
      enabled: !isRushing,
      queryFn: ({ signal }: { signal: AbortSignal }) => readPage(house, filter, { day, page }, signal),
    })),
  });
  const loaded = new Map(pages.map(({ day, page }, i) => [keyOf(day, page), queries[i]?.data]));
  const at = ({ day, position }: Slot) =>
    loaded.get(keyOf(day, Math.floor(position / PAGE)))?.[position % PAGE];
  const find = (id: string, { day }: Slot): Slot | undefined => {
    for (const { day: of, page } of pages) {
      const i = of === day ? (loaded.get(keyOf(day, page))?.findIndex((photo) => photo.id === id) ?? -1) : -1;
      if (i >= 0) return { day, position: page * PAGE + i };
    }
    return undefined;
  };
  const failed = queries.filter(({ isError }) => isError);
  return {
    at,
    find,
    error: failed[0]?.error ?? null,
    retry: () => void Promise.all(failed.map((query) => query.refetch())),
  };
}

const keyOf = (day: string | null, page: number) => `${day} ${page}`;

async function readPage(
  house: string,
  filter: PhotoFilter,
  { day, page }: WallPage,
  signal: AbortSignal,
): Promise<PhotoView[]> {
  const of = day === null ? ({ dated: '0' } as const) : { day };
  const query = { ...filter, ...of, order: 'newest-day', offset: page * PAGE, limit: PAGE } as const;
  return (await call('listPhotos', { params: { house }, query, signal })).photos;
}
