import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

export interface DialogProps {
  title: string;
  isOpen: boolean;
  onClose: () => void;
  children: ReactNode;
  /** 'alertdialog' for questions whose answer cannot be taken back. */
  role?: 'dialog' | 'alertdialog';
  /** 'aside': beside what it asks about, which stays in sight, on a phone below it; 'wide': as much room as there is. */
  stands?: 'middle' | 'aside' | 'wide';
}

/** A question or a short form over the screen. Escape and a press outside close it. */
export function Dialog({
  title,
  isOpen,
  onClose,
  children,
  role = 'dialog',
  stands = 'middle',
}: DialogProps) {
  return (
    <ModalOverlay
      className={stands === 'middle' ? 'dialog-veil' : `dialog-veil dialog-veil-${stands}`}
      isOpen={isOpen}
      isDismissable={role === 'dialog'}
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
    >
      <Modal className="dialog-frame">
        <AriaDialog className="dialog" role={role}>
          <Heading slot="title" className="dialog-title">
            {title}
          </Heading>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
