import { useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';

interface SaidListProps {
  title: string;
  said: readonly { mark: string; words: string }[];
  onGoTo: (mark: string) => void;
}

/** Named before the rest is counted. */
const NAMED = 20;

/** Members of which the same was said, each a way back to it. */
export function SaidList({ title, said, onGoTo }: SaidListProps) {
  const { t } = useWords();
  const [isWhole, setIsWhole] = useState(false);
  if (said.length === 0) return null;
  const isPlain = said.every(({ words }) => words === '');
  const named = isWhole ? said : said.slice(0, NAMED);
  return (
    <div className="review-said-of">
      <h3>{title}</h3>
      <ul className={isPlain ? 'plain-list review-said-marks' : 'plain-list review-said-list'}>
        {named.map(({ mark, words }) => (
          <li key={mark}>
            <Button look="quiet" onPress={() => onGoTo(mark)}>
              {mark}
            </Button>
            {words === '' ? null : <span>{words}</span>}
          </li>
        ))}
      </ul>
      {named.length < said.length ? (
        <Button onPress={() => setIsWhole(true)}>
          {t('coverings.andMore', { count: said.length - named.length })}
        </Button>
      ) : null}
    </div>
  );
}
