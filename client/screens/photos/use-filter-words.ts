import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import type { PhotoFilter } from './photo-filter.ts';
import { useAdders } from './use-adders.ts';

export interface FilterWord {
  readonly key: keyof PhotoFilter;
  readonly word: string;
}

/** What the list is narrowed to, in the words of the controls. */
export function useFilterWords(house: string, filter: PhotoFilter): FilterWord[] {
  const { t, lang } = useWords();
  const adders = useAdders(house, filter.by !== undefined);
  const { day, mark, stage, by, untagged } = filter;
  const name = adders.find(({ id }) => id === by)?.name ?? t('common.someone');
  const words: (FilterWord | null)[] = [
    day === undefined ? null : { key: 'day', word: formatDay(day, lang) },
    mark === undefined ? null : { key: 'mark', word: mark },
    stage === undefined ? null : { key: 'stage', word: t(`common.stage.${stage}`) },
    by === undefined ? null : { key: 'by', word: t('photos.filter.addedBy', { name }) },
    untagged === undefined ? null : { key: 'untagged', word: t('photos.filter.untagged') },
  ];
  return words.filter((word) => word !== null);
}
