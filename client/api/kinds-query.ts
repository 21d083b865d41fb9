import { queryOptions } from '@tanstack/react-query';

/** Says that this browser has the kinds already, so that they need not wait for all else. */
const NOTE = 'kinds-here';
export const hasKinds = () => localStorage.getItem(NOTE) !== null;

/** The kinds that come with the program, which are code of their own. */
export const kindsQuery = queryOptions({
  queryKey: ['kinds'],
  queryFn: async () => {
    const { KINDS } = await import('#domain/lexicon/kinds');
    localStorage.setItem(NOTE, '1');
    return KINDS;
  },
  staleTime: Infinity,
  gcTime: Infinity,
});
