import { useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import type { BenchTag } from './bench-tags.ts';

export interface WithdrawDialogProps {
  tag: BenchTag | null;
  onClose: () => void;
  onWithdraw: (tag: BenchTag, reason: string) => void;
}

export function WithdrawDialog({ tag, onClose, onWithdraw }: WithdrawDialogProps) {
  const { t } = useWords();
  const title = tag
    ? t('bench.withdraw.title', { mark: tag.mark, stage: t(`common.stage.${tag.stage}`) })
    : '';
  return (
    <Dialog title={title} isOpen={tag !== null} onClose={onClose}>
      {tag ? <WithdrawForm tag={tag} onClose={onClose} onWithdraw={onWithdraw} /> : null}
    </Dialog>
  );
}

function WithdrawForm({ tag, onClose, onWithdraw }: WithdrawDialogProps & { tag: BenchTag }) {
  const { t } = useWords();
  const [reason, setReason] = useState('');
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        onWithdraw(tag, reason.trim());
      }}
    >
      <p>{t('bench.withdraw.text')}</p>
      <Field
        label={t('bench.withdraw.reason')}
        description={t('common.optional')}
        value={reason}
        onChange={setReason}
        maxLength={1000}
        autoFocus
      />
      <div className="row">
        <Button type="submit" look="danger">
          {t('bench.withdraw.submit')}
        </Button>
        <Button onPress={onClose}>{t('common.cancel')}</Button>
      </div>
    </form>
  );
}
