import type { TagView } from '#domain/contract/views';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { joinWords } from '../../i18n/join-words.ts';

/** Says at a tag that another one stands beside it, since two people changed the same one at once. */
export function RivalsNote({ rivals }: { rivals: readonly TagView[] }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (rivals.length === 0) return null;
  const others = rivals.map(({ mark, stage, by, at }) =>
    t('bench.list.rival', {
      mark,
      stage: t(`common.stage.${stage}`),
      who: by?.name ?? t('common.nobody'),
      when: formatInstant(at, zone, lang),
    }),
  );
  return <p className="bench-rivals">{t('bench.list.rivals', { others: joinWords(others, lang) })}</p>;
}
