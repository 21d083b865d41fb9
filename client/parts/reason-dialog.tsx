import { useState } from 'react';
import { useWords } from '../i18n/use-words.ts';
import { Button } from './button.tsx';
import { Dialog } from './dialog.tsx';
import { Field } from './field.tsx';
import { ProblemNotice } from './notice.tsx';

export interface ReasonDialogProps {
  title: string;
  text: string;
  /** The verb on the button that does it. */
  yes: string;
  isPending: boolean;
  error: unknown;
  onYes: (reason: string) => void;
  onClose: () => void;
}

/** Asks for the reason, which is needed, before something that was said is withdrawn. */
export function ReasonDialog({ title, text, yes, isPending, error, onYes, onClose }: ReasonDialogProps) {
  const { t } = useWords();
  const [reason, setReason] = useState('');
  const [isShort, setIsShort] = useState(false);
  return (
    <Dialog title={title} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          setIsShort(reason.trim() === '');
          if (reason.trim() !== '') onYes(reason.trim());
        }}
      >
        <p>{text}</p>
        <Field
          label={t('clock.reason')}
          value={reason}
          onChange={setReason}
          maxLength={1000}
          error={isShort ? t('clock.needReason') : null}
          autoFocus
        />
        <ProblemNotice error={error} keepsTyped />
        <div className="row">
          <Button type="submit" look="danger" isPending={isPending}>
            {yes}
          </Button>
          <Button onPress={onClose}>{t('common.cancel')}</Button>
        </div>
      </form>
    </Dialog>
  );
}
