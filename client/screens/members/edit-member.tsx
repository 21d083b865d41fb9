import { useState, type FormEvent } from 'react';
import type { MemberView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { useUnsaved } from '../../parts/unsaved.tsx';
import { isChanged, memberBody, memberDraft, wrongLengths } from './member-draft.ts';
import { useHouse } from '../../shell/use-house.ts';
import { MemberFields } from './member-fields.tsx';
import { usePutMember } from './use-put-member.ts';

export function EditMember({ member, onClose }: { member: MemberView; onClose: () => void }) {
  const { t } = useWords();
  const { unit } = useHouse();
  const [start] = useState(() => memberDraft(member, unit));
  const [draft, setDraft] = useState(start);
  const unsaved = useUnsaved(isChanged(draft, start));
  const close = () => unsaved.leaveThen(onClose);
  const put = usePutMember(() => {
    unsaved.saved();
    onClose();
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (wrongLengths(draft, unit).length > 0) return;
    put.mutate({ mark: member.mark, body: memberBody(draft, member.other, unit) });
  };
  return (
    <Dialog title={t('members.editTitle', { mark: member.mark })} isOpen onClose={close}>
      <form className="form" onSubmit={submit} noValidate>
        <MemberFields draft={draft} onChange={setDraft} />
        <ProblemNotice error={put.error} keepsTyped />
        <div className="row">
          <Button type="submit" look="act" isPending={put.isPending}>
            {t('common.save')}
          </Button>
          <Button onPress={close}>{t('common.cancel')}</Button>
        </div>
        {unsaved.question}
      </form>
    </Dialog>
  );
}
