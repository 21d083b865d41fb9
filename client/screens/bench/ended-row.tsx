import { formatInstant } from '../../i18n/format.ts';
import { reasonWords } from '../../i18n/taken-back.ts';
import { useWords } from '../../i18n/use-words.ts';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { BenchTag } from './bench-tags.ts';

/** A tag that no longer counts: what it said, who ended it, when and why. */
export function EndedRow({ tag }: { tag: BenchTag }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const said = { who: tag.by?.name ?? t('common.nobody'), when: formatInstant(tag.at, zone, lang) };
  const { ended } = tag;
  return (
    <li className="bench-row bench-row-ended">
      <div className="bench-row-remarks">
        <strong>{tag.mark}</strong>
        <StageName stage={tag.stage} />
        <span className="soft">{t('bench.list.by', said)}</span>
      </div>
      {ended && tag.state !== 'standing' ? (
        <p>
          {tag.unsent === 'withdrawing'
            ? t('bench.unsent.withdrawing')
            : t(`bench.list.${tag.state}`, {
                who: ended.by?.name ?? t('common.nobody'),
                when: formatInstant(ended.at, zone, lang),
              })}{' '}
          {ended.reason === ''
            ? ''
            : t('bench.list.reason', {
                reason: reasonWords(t, ended.reason),
              })}
        </p>
      ) : null}
    </li>
  );
}
