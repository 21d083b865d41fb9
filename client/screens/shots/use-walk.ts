import { useEffect, useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { browserStorage } from '../../outbox/browser-storage.ts';
import { isOfNow, keepWalk, readWalk, type Days } from './kept-walk.ts';

/** The list as it is now, and the walk as somebody is on it: that keeps its order until they ask for another. */
export function useWalk(house: string, days: Days) {
  const storage = browserStorage('sessionStorage');
  const [kept, setKept] = useState(() => readWalk(storage, house, days));
  const query = useQuery({
    queryKey: keys.shots(house, days),
    queryFn: ({ signal }) => call('shotList', { params: { house }, query: { days }, signal }),
    // Where the network is gone, yesterday's order is better than none.
    ...(kept ? { initialData: kept, initialDataUpdatedAt: 0 } : {}),
  });
  const now = query.data;
  const walk = kept && now && isOfNow(kept, now) ? kept : now;
  useEffect(() => {
    if (!walk || walk === kept) return;
    setKept(walk);
    keepWalk(storage, house, days, walk);
  }, [walk, kept, house, days, storage]);
  const order = () => {
    if (!now) return;
    setKept(now);
    keepWalk(storage, house, days, now);
  };
  return { query, walk, order };
}
