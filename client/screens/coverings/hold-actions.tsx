import { useState } from 'react';
import { mayAct } from '#domain/contract/acts';
import type { CoveringView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { HoldReadyBack } from './hold-ready-back.tsx';
import { HoldReadyDialog } from './hold-ready-dialog.tsx';

/** What can be done for the inspection of a covering that is open, by whoever looks. */
export function HoldActions({ covering, gaps }: { covering: CoveringView; gaps: number }) {
  const { t } = useWords();
  const { id: house, role } = useHouse();
  const [asks, setAsks] = useState<'ready' | 'back' | null>(null);
  const close = () => setAsks(null);
  const { state } = covering.hold;
  const isInspectors = mayAct(role, 'review') && state === 'ready';
  return (
    <>
      {mayAct(role, 'record') && (state === 'planned' || state === 'refused') ? (
        <Button onPress={() => setAsks('ready')}>{t('hold.ready.open')}</Button>
      ) : null}
      {mayAct(role, 'record') && state === 'ready' ? (
        <Button onPress={() => setAsks('back')}>{t('hold.back.open')}</Button>
      ) : null}
      <LinkButton
        look={isInspectors ? 'act' : 'plain'}
        to={`/houses/${house}/coverings/${covering.id}/review`}
      >
        {t(isInspectors ? 'hold.toReview' : 'hold.toLook')}
      </LinkButton>
      {asks === 'ready' ? <HoldReadyDialog covering={covering} gaps={gaps} onClose={close} /> : null}
      {asks === 'back' ? <HoldReadyBack covering={covering} onClose={close} /> : null}
    </>
  );
}
