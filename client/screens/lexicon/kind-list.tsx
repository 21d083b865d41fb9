import { Link } from 'react-router';
import type { Kind } from '#domain/lexicon/kinds';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

export interface KindListProps {
  kinds: readonly Kind[];
  label: string;
  /** Members of each in this house, where that is to be said. */
  counts?: (kind: Kind) => number;
}

/** Set like the columns of a dictionary: the word, its reading, its gloss. */
export function KindList({ kinds, label, counts }: KindListProps) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  return (
    <ul className="lexicon-list plain-list" aria-label={label}>
      {kinds.map((kind) => {
        const reading = lang === 'en' ? kind.romaji : kind.kana === kind.kanji ? '' : kind.kana;
        const count = counts?.(kind) ?? 0;
        return (
          <li key={kind.id}>
            <Link to={`/houses/${house}/lexicon/${kind.id}`}>
              <span lang={kind.kanji === '' ? 'en' : 'ja'} className="lexicon-word">
                {kind.kanji || kind.en}
              </span>{' '}
              {reading === '' ? null : <span className="lexicon-reading">{reading}</span>}
            </Link>
            {kind.kanji === '' ? null : (
              <span className="soft" lang="en">
                {kind.en}
              </span>
            )}
            {count > 0 ? <span className="lexicon-count">{t('common.count.members', { count })}</span> : null}
          </li>
        );
      })}
    </ul>
  );
}
