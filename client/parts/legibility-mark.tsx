import type { LegibilityView } from '#domain/contract/legibility-views';
import type { Verdict } from '#domain/photo/legibility';
import { formatList } from '../i18n/format.ts';
import { useWords } from '../i18n/use-words.ts';
import { VerdictSign } from './verdict-sign.tsx';

type Known = Pick<LegibilityView, 'verdict' | 'reasons'>;

/** How well the member can be read in its region, as a sign with words; nothing before it is known. */
export function LegibilityMark({ legibility }: { legibility: Known }) {
  const { t, lang } = useWords();
  const { verdict, reasons } = legibility;
  if (verdict === null)
    return reasons.length === 0 ? null : <span className="soft">{t('legibility.notMeasured')}</span>;
  const because = formatList(
    reasons.map((reason) => t(`legibility.reason.${reason}`)),
    lang,
  );
  const name = t(`legibility.verdict.${verdict}`);
  const words = reasons.length === 0 ? name : t('legibility.because', { verdict: name, reasons: because });
  return (
    <span className={LOOKS[verdict]}>
      <VerdictSign verdict={verdict} /> {t('legibility.mark', { words })}
    </span>
  );
}

const LOOKS: Readonly<Record<Verdict, string>> = {
  clear: 'legibility soft',
  weak: 'legibility',
  unreadable: 'legibility act-text',
};
