import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { knownTime } from '../report/known-time.ts';
import type { Shown } from './evidence-of.ts';

interface EvidenceChoiceProps {
  evidence: readonly Shown[];
  shown: Shown | undefined;
  onShow: (which: number) => void;
}

/** Which of several records is looked at. */
export function EvidenceChoice({ evidence, shown, onShow }: EvidenceChoiceProps) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (evidence.length < 2) return null;
  return (
    <ul className="row plain-list" aria-label={t('hold.review.records')}>
      {evidence.map(({ tag, told }, i) => (
        <li key={tag.id}>
          <button
            type="button"
            className="review-record"
            aria-pressed={tag.id === shown?.tag.id}
            onClick={() => onShow(i)}
          >
            {t('report.record', {
              stage: t(`common.stage.${tag.stage}`),
              when: knownTime(t, lang, zone, told),
            })}
          </button>
        </li>
      ))}
    </ul>
  );
}
