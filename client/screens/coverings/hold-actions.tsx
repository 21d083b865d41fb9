import { useState } from 'react';
import { mayAct } from '#domain/contract/acts';
import type { Standing } from '#domain/contract/hold';
import type { CoveringView } from '#domain/contract/views';
import type { HoldPhase } from '#domain/record/hold-phase';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { HoldReadyBack } from './hold-ready-back.tsx';
import { HoldReadyDialog } from './hold-ready-dialog.tsx';

interface HoldActionsProps {
  covering: CoveringView;
  standing: Standing;
  gaps: number;
}

/** The states in which the next thing is to say that it is ready. */
const BEFORE_READY: readonly HoldPhase[] = ['planned', 'refused', 'outrun'];

/** What can be done for the inspection of a covering that is open, by whoever looks. */
export function HoldActions({ covering, standing, gaps }: HoldActionsProps) {
  const { t } = useWords();
  const { id: house, role } = useHouse();
  const [asks, setAsks] = useState<'ready' | 'back' | null>(null);
  const close = () => setAsks(null);
  const { state } = covering.hold;
  const isToReview = mayAct(role, 'review') && state === 'ready';
  return (
    <>
      {mayAct(role, 'record') && BEFORE_READY.includes(standing.phase) ? (
        <Button onPress={() => setAsks('ready')}>{t('hold.ready.open')}</Button>
      ) : null}
      {mayAct(role, 'record') && state === 'ready' ? (
        <Button onPress={() => setAsks('back')}>{t('hold.back.open')}</Button>
      ) : null}
      <LinkButton
        // Whoever keeps the record may review, too; what is next for them is what is missing.
        look={isToReview && role === 'inspector' ? 'act' : 'plain'}
        to={`/houses/${house}/coverings/${covering.id}/review`}
      >
        {t(isToReview ? 'hold.toReview' : 'hold.toLook')}
      </LinkButton>
      {asks === 'ready' ? (
        <HoldReadyDialog covering={covering} standing={standing} gaps={gaps} onClose={close} />
      ) : null}
      {asks === 'back' ? <HoldReadyBack covering={covering} onClose={close} /> : null}
    </>
  );
}
