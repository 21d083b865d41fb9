import { useState } from 'react';
import type { CoveringView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useCoveringChange } from './use-covering-change.ts';

export function ReopenDialog({ covering, onClose }: { covering: CoveringView; onClose: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [reason, setReason] = useState('');
  const [isShort, setIsShort] = useState(false);
  const reopen = useCoveringChange(
    house,
    () => call('reopenCovering', { params: { covering: covering.id }, body: { reason: reason.trim() } }),
    onClose,
  );
  return (
    <Dialog title={t('coverings.reopen.title', { name: covering.name })} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          setIsShort(reason.trim() === '');
          if (reason.trim() !== '') reopen.mutate(undefined);
        }}
      >
        <p>{t('coverings.reopen.text')}</p>
        <Field
          label={t('coverings.reopen.reason')}
          value={reason}
          onChange={setReason}
          maxLength={1000}
          error={isShort ? t('coverings.reopen.needReason') : null}
          autoFocus
        />
        <ProblemNotice error={reopen.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={reopen.isPending}>
            {t('coverings.reopen.submit')}
          </Button>
          <Button onPress={onClose}>{t('common.cancel')}</Button>
        </div>
      </form>
    </Dialog>
  );
}
