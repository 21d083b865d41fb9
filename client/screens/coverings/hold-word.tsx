import type { HoldPhase } from '#domain/record/hold-phase';
import { useWords } from '../../i18n/use-words.ts';
import { HoldSign } from './hold-sign.tsx';

const BAD: readonly HoldPhase[] = ['refused', 'outrun', 'under-taken-back', 'without-release'];

/** Where a covering stands with its inspection, as a sign with a word. */
export function HoldWord({ phase }: { phase: HoldPhase }) {
  const { t } = useWords();
  return (
    <span className={BAD.includes(phase) ? 'legibility act-text' : 'legibility'}>
      <HoldSign phase={phase} /> {t(`hold.state.${phase}`)}
    </span>
  );
}
