import type { ReactNode } from 'react';
import { useWords } from '../i18n/use-words.ts';
import { Button } from './button.tsx';
import { Dialog } from './dialog.tsx';
import { ProblemNotice } from './notice.tsx';

export interface ConfirmProps {
  title: string;
  text: string;
  /** The verb on the button that does it, never a bare "OK". */
  yes: string;
  isOpen: boolean;
  isPending: boolean;
  error: unknown;
  onYes: () => void;
  onClose: () => void;
  children?: ReactNode;
}

/** Asks before something is done that cannot simply be undone. */
export function Confirm(props: ConfirmProps) {
  const { t } = useWords();
  return (
    <Dialog title={props.title} isOpen={props.isOpen} onClose={props.onClose} role="alertdialog">
      <p>{props.text}</p>
      {props.children}
      <ProblemNotice error={props.error} />
      <div className="row">
        <Button look="danger" isPending={props.isPending} onPress={props.onYes}>
          {props.yes}
        </Button>
        <Button autoFocus onPress={props.onClose}>
          {t('common.cancel')}
        </Button>
      </div>
    </Dialog>
  );
}
