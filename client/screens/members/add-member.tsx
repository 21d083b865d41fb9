import { useState, type FormEvent } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { EMPTY_MEMBER, isChanged, memberBody, readNewMark, wrongLengths } from './member-draft.ts';
import { useHouse } from '../../shell/use-house.ts';
import { MemberFields } from './member-fields.tsx';
import { usePutMember } from './use-put-member.ts';

export interface AddMemberProps {
  isOpen: boolean;
  /** Marks that stand in the schedule: entering one of them again would overwrite it unseen. */
  taken: ReadonlySet<string>;
  onClose: () => void;
}

export function AddMember({ isOpen, taken, onClose }: AddMemberProps) {
  const { t } = useWords();
  const { unit } = useHouse();
  const [draft, setDraft] = useState(EMPTY_MEMBER);
  const [tried, setTried] = useState(false);
  const unsaved = useUnsaved(isChanged(draft, EMPTY_MEMBER));
  const end = () => {
    unsaved.saved();
    setDraft(EMPTY_MEMBER);
    setTried(false);
    onClose();
  };
  const close = () => unsaved.leaveThen(end);
  const put = usePutMember(end);
  const read = readNewMark(draft.mark, taken);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (!('wrong' in read) && wrongLengths(draft, unit).length === 0)
      put.mutate({ mark: read.mark, body: memberBody(draft, {}, unit) });
  };
  const error = tried && 'wrong' in read ? t(`members.wrong.${read.wrong}`, { mark: read.mark ?? '' }) : null;
  return (
    <Dialog title={t('members.addTitle')} isOpen={isOpen} onClose={close}>
      <form className="form" onSubmit={submit} noValidate>
        <Field
          label={t('members.fields.mark')}
          description={t('members.fields.markHint')}
          autoFocus
          autoComplete="off"
          maxLength={400}
          value={draft.mark}
          onChange={(mark) => setDraft({ ...draft, mark })}
          error={error}
        />
        <MemberFields draft={draft} onChange={setDraft} />
        <ProblemNotice error={put.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={put.isPending}>
            {t('members.add')}
          </Button>
          <Button onPress={close}>{t('common.cancel')}</Button>
        </div>
        {unsaved.question}
      </form>
    </Dialog>
  );
}
