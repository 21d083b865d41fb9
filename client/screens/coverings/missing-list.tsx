import { useWords } from '../../i18n/use-words.ts';
import type { Line } from '../report/line-row.tsx';
import { missingByReason } from '../report/missing-by-reason.ts';

/** Marks that are named of each reason before the rest is counted. */
const NAMED = 3;

/** What a covering misses, in few words: why, and the first marks of each reason. */
export function MissingList({ lines }: { lines: readonly Line[] }) {
  const { t } = useWords();
  return (
    <ul className="plain-list">
      {missingByReason(lines).map(({ reason, marks }) => (
        <li key={reason} className="coverings-missing">
          <span>{t(`report.short.${reason}`)}</span>
          {marks.slice(0, NAMED).map((mark) => (
            <strong key={mark}>{mark}</strong>
          ))}
          {marks.length > NAMED ? (
            <span>{t('coverings.andMore', { count: marks.length - NAMED })}</span>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
