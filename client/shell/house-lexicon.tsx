import { useEffect, useMemo, useState, type ReactNode } from 'react';
import { useIsFetching, useQuery } from '@tanstack/react-query';
import { makeLexicon } from '#domain/lexicon/make-lexicon';
import { hasKinds, kindsQuery } from '../api/kinds-query.ts';
import { termsQuery } from '../api/terms-query.ts';
import { LexiconContext } from './use-lexicon.ts';

const PAUSE_MS = 400;
/**
 * Gives all below it the words of the house. Nobody waits for them: on the first visit they come when nothing
 * else is waited for, and until then a kind stands as the schedule writes it.
 */
export function HouseLexicon({ house, children }: { house: string; children: ReactNode }) {
  const own = useQuery(termsQuery(house)).data?.terms;
  const kinds = useKinds();
  const lexicon = useMemo(() => makeLexicon(kinds ?? [], own ?? []), [kinds, own]);
  return <LexiconContext value={lexicon}>{children}</LexiconContext>;
}

function useKinds() {
  const [isTime, setIsTime] = useState(hasKinds);
  const isQuiet = useIsFetching() === 0;
  useEffect(() => {
    if (isTime || !isQuiet) return;
    const pause = setTimeout(() => setIsTime(true), PAUSE_MS);
    return () => clearTimeout(pause);
  }, [isTime, isQuiet]);
  return useQuery({ ...kindsQuery, enabled: isTime }).data;
}
