import { useState, type FormEvent } from 'react';
import type { MemberView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { memberBody, memberDraft } from './member-draft.ts';
import { MemberFields } from './member-fields.tsx';
import { usePutMember } from './use-put-member.ts';

export function EditMember({ member, onClose }: { member: MemberView; onClose: () => void }) {
  const { t } = useWords();
  const [draft, setDraft] = useState(() => memberDraft(member));
  const put = usePutMember(onClose);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    put.mutate({ mark: member.mark, body: memberBody(draft, member.other) });
  };
  return (
    <Dialog title={t('members.editTitle', { mark: member.mark })} isOpen onClose={onClose}>
      <form className="form" onSubmit={submit} noValidate>
        <MemberFields draft={draft} onChange={setDraft} />
        <ProblemNotice error={put.error} />
        <div className="row">
          <Button type="submit" look="act" isPending={put.isPending}>
            {t('common.save')}
          </Button>
          <Button onPress={onClose}>{t('common.cancel')}</Button>
        </div>
      </form>
    </Dialog>
  );
}
