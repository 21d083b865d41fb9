import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useProtections } from '../protection/use-protections.ts';
import type { Telling } from './telling.ts';

/** What sentences about this house need. Without the names of its coverings they still read. */
export function useTelling(): Telling {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const { data } = useQuery({
    queryKey: keys.coverings(house),
    queryFn: ({ signal }) => call('listCoverings', { params: { house }, signal }),
  });
  const laid = useProtections(house).data?.protections ?? [];
  const protections = new Map(laid.map(({ id, name }) => [id, name]));
  const coverings = new Map((data?.coverings ?? []).map(({ id, name }) => [id, name]));
  return { t, lang, zone, coverings, protections, lexicon: useLexicon() };
}
