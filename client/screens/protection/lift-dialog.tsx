import { useState } from 'react';
import type { ProtectionView } from '#domain/contract/protection';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { useHouse } from '../../shell/use-house.ts';
import type { When } from '../coverings/closing-preview.ts';
import { ClosingWhen } from '../coverings/closing-when.tsx';
import { instantOf, liftedFault } from './protection-draft.ts';
import { useProtectionChange } from './use-protection-change.ts';

/** Says when protection was lifted. */
export function LiftDialog({ protection, onClose }: { protection: ProtectionView; onClose: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [when, setWhen] = useState<When>({ is: 'now' });
  const [note, setNote] = useState('');
  const [wasTried, setWasTried] = useState(false);
  const { id, name, laidAt } = protection;
  const lift = useProtectionChange(
    house,
    () => call('liftProtection', { params: { protection: id }, body: { liftedAt: instantOf(when), note } }),
    onClose,
  );
  const fault = liftedFault(when, new Date(), laidAt);
  return (
    <Dialog title={t('protection.lifting.title', { name })} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          setWasTried(true);
          if (fault === null) lift.mutate(undefined);
        }}
      >
        <p>{t('protection.lifting.text')}</p>
        <ClosingWhen
          when={when}
          wasTried={wasTried}
          asked={{
            question: t('protection.lifting.when'),
            fault:
              fault === 'badTime' ? t('coverings.close.badTime') : fault && t(`protection.lifting.${fault}`),
          }}
          onChange={setWhen}
        />
        <TextArea
          label={t('coverings.close.note')}
          value={note}
          onChange={setNote}
          rows={2}
          maxLength={2000}
        />
        <ProblemNotice error={lift.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={lift.isPending}>
            {t('protection.lifting.submit')}
          </Button>
          <Button onPress={onClose}>{t('common.cancel')}</Button>
        </div>
      </form>
    </Dialog>
  );
}
