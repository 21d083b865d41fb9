import { useWords } from '../../i18n/use-words.ts';
import type { Answer } from './review-draft.ts';

/** In a square of 12: a tick, a tick in brackets, a bar. */
const PATHS: Readonly<Record<Answer['is'], string>> = {
  seen: 'M2 6.5l3 3l5-7',
  waived: 'M3 1.5h-1.8v9h1.8M9 1.5h1.8v9h-1.8M4 6.5l1.6 1.6l2.6-3.8',
  missing: 'M2 6h8',
};

/** What has been said of a member, as a sign with a word. */
export function AnswerSign({ is }: Pick<Answer, 'is'>) {
  const { t } = useWords();
  return (
    <span className={is === 'missing' ? 'legibility act-text' : 'legibility'}>
      <svg className="verdict-sign" viewBox="0 0 12 12" width="14" height="14" aria-hidden="true">
        <path d={PATHS[is]} fill="none" stroke="currentColor" strokeWidth="1.6" />
      </svg>{' '}
      {t(`hold.review.answer.${is}`)}
    </span>
  );
}
