import { useMemo, type ReactNode } from 'react';
import { useQuery } from '@tanstack/react-query';
import { lexiconOf } from '#domain/lexicon/lexicon';
import { termsQuery } from '../api/terms-query.ts';
import { LexiconContext } from './use-lexicon.ts';

/** Gives all below it the words of the house. Nobody waits for them. */
export function HouseLexicon({ house, children }: { house: string; children: ReactNode }) {
  const { data } = useQuery(termsQuery(house));
  const terms = data?.terms;
  const lexicon = useMemo(() => lexiconOf(terms ?? []), [terms]);
  return <LexiconContext value={lexicon}>{children}</LexiconContext>;
}
