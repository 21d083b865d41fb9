import type { CoveringView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { holdPhase } from '#domain/record/hold-phase';
import { HoldSign } from './hold-sign.tsx';

/** Where a covering stands with its inspection, as a sign with a word. */
export function HoldWord({ covering }: { covering: Pick<CoveringView, 'hold' | 'closed'> }) {
  const { t } = useWords();
  const phase = holdPhase(covering);
  const isBad = phase === 'refused' || phase === 'without-release';
  return (
    <span className={isBad ? 'legibility act-text' : 'legibility'}>
      <HoldSign phase={phase} /> {t(`hold.state.${phase}`)}
    </span>
  );
}
