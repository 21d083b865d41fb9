import { useState } from 'react';
import type { FindingView } from '#domain/contract/findings';
import { useSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { findingSentence } from './finding-sentence.ts';
import { useAccept } from './use-findings.ts';

export interface AcceptDialogProps {
  findings: readonly FindingView[];
  onClose: () => void;
}

const SHOWN = 3;

/** Somebody takes findings as they are: by name, with a reason. */
export function AcceptDialog({ findings, onClose }: AcceptDialogProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const name = useSession().data?.account?.name ?? '';
  const [reason, setReason] = useState('');
  const [isShort, setIsShort] = useState(false);
  // What was looked at when the dialog opened; a change meanwhile is refused by the server, and said.
  const [seen] = useState(findings);
  const accept = useAccept(house, seen, onClose);
  const words = seen.every(({ kind }) => kind === 'disputed') ? 'findings.doubt.dialog' : 'findings.dialog';
  return (
    <Dialog title={t(`${words}.title`, { count: seen.length })} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          setIsShort(reason.trim() === '');
          if (reason.trim() !== '') accept.mutate(reason.trim());
        }}
      >
        <AcceptedSentences findings={seen} />
        <p>{t(`${words}.text`, { name })}</p>
        {seen.some(({ stops }) => stops) ? <p>{t('findings.dialog.counts')}</p> : null}
        <Field
          label={t(`${words}.reason`)}
          value={reason}
          onChange={setReason}
          maxLength={1000}
          error={isShort ? t('findings.dialog.needReason') : null}
          autoFocus
        />
        <ProblemNotice error={accept.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={accept.isPending}>
            {t(`${words}.submit`)}
          </Button>
          <Button onPress={onClose}>{t('common.cancel')}</Button>
        </div>
      </form>
    </Dialog>
  );
}

function AcceptedSentences({ findings }: Pick<AcceptDialogProps, 'findings'>) {
  const { t, lang } = useWords();
  const house = useHouse();
  const said = [...new Set(findings.map((finding) => findingSentence(t, lang, house, finding)))];
  return (
    <ul className="plain-list stack">
      {said.slice(0, SHOWN).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
      {said.length > SHOWN ? (
        <li className="soft">{t('findings.dialog.more', { count: said.length - SHOWN })}</li>
      ) : null}
    </ul>
  );
}
