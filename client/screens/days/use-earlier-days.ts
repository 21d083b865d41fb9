import { useCallback, useState } from 'react';
import { useInfiniteQuery } from '@tanstack/react-query';
import type { EarlierDaysView } from '#domain/contract/journal-views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useHouse } from '../../shell/use-house.ts';

const PAGE = 20;

/** The days that came with the front page, and those before them as far as they have been asked for. */
export function useEarlierDays(first: EarlierDaysView) {
  const { id: house } = useHouse();
  const [wanted, setWanted] = useState(false);
  const start = first.next;
  const pages = useInfiniteQuery({
    queryKey: keys.earlierDays(house, start ?? ''),
    enabled: wanted && start !== null,
    initialPageParam: start ?? '',
    queryFn: ({ pageParam, signal }) =>
      call('listEarlierDays', { params: { house }, query: { before: pageParam, limit: PAGE }, signal }),
    getNextPageParam: ({ next }) => next,
  });
  const { hasNextPage, isFetching, fetchNextPage, data, error, refetch } = pages;
  const hasMore = data ? hasNextPage : start !== null;
  const loadMore = useCallback(() => {
    if (isFetching) return;
    setWanted(true);
    if (data) void fetchNextPage();
    else if (wanted) void refetch();
  }, [data, isFetching, fetchNextPage, refetch, wanted]);
  const endRef = useSeen(loadMore, error === null);
  const days = [...first.days, ...(data?.pages.flatMap((page) => page.days) ?? [])];
  return { days, hasMore, isLoading: isFetching, error, loadMore, endRef };
}

/** Calls `see` when the element comes near the window; not after a failure, which would repeat itself. */
function useSeen(see: () => void, isOn: boolean) {
  return useCallback(
    (element: HTMLElement | null) => {
      if (!element || !isOn) return undefined;
      const watch = new IntersectionObserver(([entry]) => entry?.isIntersecting && see(), {
        rootMargin: '400px',
      });
      watch.observe(element);
      return () => watch.disconnect();
    },
    [see, isOn],
  );
}
