import { joinWords } from '../../i18n/join-words.ts';
import { kindLabel } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LegibilityMark } from '../../parts/legibility-mark.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { knownTime } from '../report/known-time.ts';
import { RecordFindings } from '../report/record-findings.tsx';
import type { Weighed } from './closing-preview.ts';

const SHOWN = 30;

/** What is on record at a closing but needs somebody's eye, as long as it can still be photographed again. */
export function WeighList({ weighed }: { weighed: readonly Weighed[] }) {
  const { t } = useWords();
  const count = weighed.length;
  if (count === 0) return null;
  const label = t('report.weigh', { count });
  return (
    <div className="coverings-weigh" role="group" aria-label={label}>
      <p>{label}</p>
      <ul>
        {weighed.slice(0, SHOWN).map((one) => (
          <li key={one.line.mark}>
            <WeighedWords {...one} />
          </li>
        ))}
        {count > SHOWN ? <li>{t('coverings.close.more', { count: count - SHOWN })}</li> : null}
      </ul>
    </div>
  );
}

function WeighedWords({ line, record }: Weighed) {
  const { t, lang } = useWords();
  const lexicon = useLexicon();
  const { zone } = useHouse();
  const { stage, legibility, findings } = record;
  const seen = t('report.record', {
    stage: t(`common.stage.${stage}`),
    when: knownTime(t, lang, zone, record),
  });
  return (
    <span className="coverings-weighed">
      <span>
        <strong>{line.mark}</strong>{' '}
        {joinWords([kindLabel(line.kind, lang, lexicon), line.place, seen], lang)}
      </span>{' '}
      {legibility === 'weak' ? <LegibilityMark legibility={{ verdict: legibility, reasons: [] }} /> : null}{' '}
      <RecordFindings findings={findings} />
    </span>
  );
}
