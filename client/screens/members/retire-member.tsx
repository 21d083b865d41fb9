import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from 'react-router';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Confirm } from '../../parts/confirm.tsx';
import { useHouse } from '../../shell/use-house.ts';

export function RetireMember({ mark, onClose }: { mark: string; onClose: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const navigate = useNavigate();
  const retire = useMutation({
    mutationFn: () => call('deleteMember', { params: { house, mark } }),
    onSuccess: async ({ outcome }) => {
      onClose();
      // A removed member has no page any more; leave it before its history is asked for again.
      if (outcome === 'removed') {
        await navigate(`/houses/${house}/members`);
        client.removeQueries({ queryKey: keys.member(house, mark) });
      }
      await client.invalidateQueries({ queryKey: keys.allOf(house) });
    },
  });
  return (
    <Confirm
      title={t('members.retireTitle', { mark })}
      text={t('members.retireText')}
      yes={t('members.retire')}
      isOpen
      isPending={retire.isPending}
      error={retire.error}
      onYes={() => retire.mutate()}
      onClose={onClose}
    />
  );
}
