import { Link } from 'react-router';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LegibilityMark } from '../../parts/legibility-mark.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { BenchTag } from './bench-tags.ts';

/** Whose word a tag is, and what is to be known of it. */
export function TagRemarks({ tag }: { tag: BenchTag }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const who = tag.by?.name ?? t('common.nobody');
  return (
    <div className="bench-row-remarks">
      {tag.unsent ? <span className="act-text">{t('bench.unsent.state')}</span> : null}
      {tag.known ? (
        <Link to={`/houses/${house}/members/${encodeURIComponent(tag.mark)}`}>
          {t('bench.list.history', { mark: tag.mark })}
        </Link>
      ) : (
        <span className="act-text">{t('bench.list.unknown')}</span>
      )}
      <span className="soft">{t('bench.list.by', { who, when: formatInstant(tag.at, zone, lang) })}</span>
      <LegibilityMark legibility={tag.legibility} />
      {tag.stretch ? <span>{t('bench.stretch.shown', tag.stretch)}</span> : null}
      {tag.note === '' ? null : <span>{tag.note}</span>}
    </div>
  );
}
