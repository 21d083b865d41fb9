import { useState } from 'react';
import type { MemberView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { EditMember } from './edit-member.tsx';
import { memberBody, memberDraft } from './member-draft.ts';
import { RetireMember } from './retire-member.tsx';
import { usePutMember } from './use-put-member.ts';

export function MemberActions({ member }: { member: MemberView }) {
  const { t } = useWords();
  const [open, setOpen] = useState<'edit' | 'retire' | null>(null);
  const put = usePutMember(() => undefined);
  const close = () => setOpen(null);
  const bringBack = () =>
    put.mutate({ mark: member.mark, body: memberBody(memberDraft(member, 'mm'), member.other, 'mm') });
  return (
    <>
      <Button onPress={() => setOpen('edit')}>{t('members.edit')}</Button>
      {member.retired ? (
        <Button isPending={put.isPending} onPress={bringBack}>
          {t('members.bringBack')}
        </Button>
      ) : (
        <Button onPress={() => setOpen('retire')}>{t('members.retire')}</Button>
      )}
      <ProblemNotice error={put.error} />
      {open === 'edit' ? <EditMember member={member} onClose={close} /> : null}
      {open === 'retire' ? <RetireMember mark={member.mark} onClose={close} /> : null}
    </>
  );
}
