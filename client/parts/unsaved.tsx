import { useEffect, useState, type ReactNode } from 'react';
import { useBlocker, type Location } from 'react-router';
import { useWords } from '../i18n/use-words.ts';
import { Button } from './button.tsx';
import { Dialog } from './dialog.tsx';
import { createLeaving } from './leaving.ts';

const leaving = createLeaving();

/** For what leaves without a change of address, as signing out does: runs `go`, after the question where one is due. */
export const leaveThen = (go: () => void) => leaving.leaveThen(go);

export interface Unsaved {
  /** Stands somewhere below the form. */
  readonly question: ReactNode;
  /** Runs `go` at once, or, where something is unsaved, after the question. */
  readonly leaveThen: (go: () => void) => void;
  /** From now on nothing is asked: what was typed has been saved. */
  readonly saved: () => void;
}

/** Asks before what was typed is lost: by a link, by going back, by closing the form or the window. */
export function useUnsaved(isUnsaved: boolean): Unsaved {
  const [form] = useState(() => leaving.enter());
  useEffect(() => form.tell(isUnsaved), [form, isUnsaved]);
  useEffect(() => () => form.tell(false), [form]);
  const [wanted, setWanted] = useState<{ go: () => void } | null>(null);
  useEffect(() => form.askBy((go) => setWanted({ go })), [form]);
  const blocker = useBlocker(
    ({ currentLocation, nextLocation }) => form.isUnsaved() && !isSamePage(currentLocation, nextLocation),
  );
  useBeforeUnload(form.isUnsaved);
  const isBlocked = blocker.state === 'blocked';
  const stay = () => {
    setWanted(null);
    if (isBlocked) blocker.reset();
  };
  const leave = () => {
    form.tell(false);
    setWanted(null);
    if (isBlocked) blocker.proceed();
    wanted?.go();
  };
  const question = <LeaveQuestion isOpen={isBlocked || wanted !== null} onStay={stay} onLeave={leave} />;
  return { question, leaveThen: form.leaveThen, saved: () => form.tell(false) };
}

/** A jump within the page loses nothing. */
const isSamePage = (a: Location, b: Location) => a.pathname === b.pathname && a.search === b.search;

function useBeforeUnload(isUnsaved: () => boolean): void {
  useEffect(() => {
    const ask = (event: BeforeUnloadEvent) => {
      if (isUnsaved()) event.preventDefault();
    };
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [isUnsaved]);
}

interface LeaveQuestionProps {
  isOpen: boolean;
  onStay: () => void;
  onLeave: () => void;
}

function LeaveQuestion({ isOpen, onStay, onLeave }: LeaveQuestionProps) {
  const { t } = useWords();
  return (
    <Dialog title={t('common.unsaved.title')} isOpen={isOpen} onClose={onStay} role="alertdialog">
      <p>{t('common.unsaved.text')}</p>
      <div className="row">
        <Button autoFocus look="act" onPress={onStay}>
          {t('common.unsaved.stay')}
        </Button>
        <Button look="danger" onPress={onLeave}>
          {t('common.unsaved.leave')}
        </Button>
      </div>
    </Dialog>
  );
}
