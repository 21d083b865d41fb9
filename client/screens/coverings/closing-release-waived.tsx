import { formatList } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import type { CoveringLine } from './closing-preview.ts';
import { waivedByReason } from './waived-by-reason.ts';

/** Of the members of one reason so many are named; the rest is counted. */
const NAMED = 12;

/** What the release accepts without a record, by whom and why; `isAll`: nothing else is missing. */
export function ClosingReleaseWaived({ lines, isAll }: { lines: readonly CoveringLine[]; isAll: boolean }) {
  const { t, lang } = useWords();
  const waived = waivedByReason(lines);
  const count = waived.reduce((sum, { marks }) => sum + marks.length, 0);
  if (count === 0) return null;
  return (
    <div className="coverings-waived">
      <p>{isAll ? t('hold.close.noOtherGaps') : t('hold.close.waived', { count })}</p>
      <ul>
        {waived.map(({ marks, who, reason }) => {
          const more = marks.length - NAMED;
          const named = formatList(
            more > 0 ? [...marks.slice(0, NAMED), t('coverings.andMore', { count: more })] : marks,
            lang,
          );
          return (
            <li key={named}>
              {t('hold.close.waiver', { marks: named, who: who ?? t('common.nobody'), reason })}
            </li>
          );
        })}
      </ul>
    </div>
  );
}
