import type { Standing } from '#domain/contract/hold';
import type { HoldPhase } from '#domain/record/hold-phase';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

/** Where somebody had to say why. */
export function hasReason(phase: HoldPhase): boolean {
  return phase === 'without-release' || phase === 'under-taken-back';
}

/** Why it closed without a release, or why the one that it closed under was taken back, and by whom. */
export function HoldReason({ standing }: { standing: Pick<Standing, 'phase' | 'without' | 'takenBack'> }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const { phase, without, takenBack } = standing;
  if (phase === 'without-release')
    return <span>{without === null ? t('hold.unsaid') : t('hold.without', { reason: without })}</span>;
  if (phase !== 'under-taken-back' || takenBack === null) return null;
  const { at, by, reason } = takenBack;
  const words = { when: formatInstant(at, zone, lang), who: by?.name ?? t('common.nobody'), reason };
  return <span>{t('hold.takenBack', words)}</span>;
}
