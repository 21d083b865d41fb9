import { useState } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { InvitedView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Confirm } from '../../parts/confirm.tsx';
import { useHouse } from '../../shell/use-house.ts';

/** Somebody who was given a link and has not joined yet. */
export function InvitedRow({ invited, mayChange }: { invited: InvitedView; mayChange: boolean }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const { email, role, by, until } = invited;
  const [isEnding, setIsEnding] = useState(false);
  return (
    <tr>
      <th scope="row">
        <span className="soft">{t('people.invited')}</span>
      </th>
      <td>{t(`common.role.${role}`)}</td>
      <td>
        {email}
        {mayChange ? (
          <div className="soft">
            {t('people.linkUntil', {
              by: by ?? t('common.nobody'),
              when: formatInstant(until, zone, lang),
            })}
          </div>
        ) : null}
      </td>
      {mayChange ? (
        <td>
          <Button aria-label={t('people.endInvitationNamed', { email })} onPress={() => setIsEnding(true)}>
            {t('people.endInvitation')}
          </Button>
          {isEnding ? <EndInvitation invited={invited} onDone={() => setIsEnding(false)} /> : null}
        </td>
      ) : null}
    </tr>
  );
}

function EndInvitation({ invited: { id, email }, onDone }: { invited: InvitedView; onDone: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const end = useMutation({
    mutationFn: () => call('endInvitation', { params: { house, invitation: id } }),
    onSuccess: () => client.invalidateQueries({ queryKey: keys.people(house) }),
    onSettled: (_, error) => (error ? undefined : onDone()),
  });
  return (
    <Confirm
      title={t('people.endInvitationTitle', { email })}
      text={t('people.endInvitationText')}
      yes={t('people.endInvitation')}
      isOpen
      isPending={end.isPending}
      error={end.error}
      onYes={() => end.mutate()}
      onClose={onDone}
    />
  );
}
