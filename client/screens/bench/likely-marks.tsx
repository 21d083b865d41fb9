import { useWords } from '../../i18n/use-words.ts';
import type { Suggestion } from './suggest-marks.ts';

export interface LikelyMarksProps {
  suggestions: readonly Suggestion[];
  onChoose: (mark: string) => void;
}

/** The members that the region likely shows: one press places the tag. */
export function LikelyMarks({ suggestions, onChoose }: LikelyMarksProps) {
  const { t } = useWords();
  if (suggestions.length === 0) return null;
  return (
    <ul className="plain-list bench-likely" aria-label={t('bench.form.likely')}>
      {suggestions.map(({ mark, why }) => (
        <li key={mark}>
          <button
            type="button"
            aria-label={t('bench.form.placeNamed', { mark, why: t(`bench.form.why.${why}`) })}
            onClick={() => onChoose(mark)}
          >
            <strong>{mark}</strong> <span aria-hidden="true">{t(`bench.form.why.${why}`)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
