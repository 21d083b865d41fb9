import { useState } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { InvitedView, PersonInHouseView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Confirm } from '../../parts/confirm.tsx';
import { Table } from '../../parts/table.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { InvitedRow } from './invited-row.tsx';
import { PasswordLink } from './password-link.tsx';

export interface PeopleTableProps {
  people: readonly PersonInHouseView[];
  invited: readonly InvitedView[];
  mayChange: boolean;
}

export function PeopleTable({ people, invited, mayChange }: PeopleTableProps) {
  const { t } = useWords();
  const me = useSession().data?.account?.id;
  const [leaving, setLeaving] = useState<PersonInHouseView | null>(null);
  const [lost, setLost] = useState<PersonInHouseView | null>(null);
  const keepers = people.filter(({ role }) => role === 'owner').length;
  const columns = ['name', 'role', 'email', ...(mayChange ? (['action'] as const) : [])] as const;
  return (
    <>
      <Table
        label={t('people.list')}
        hideLabel
        headings={columns.map((key) => t(`people.${key}`))}
        onPhone="blocks"
      >
        {people.map((person) => (
          <tr key={person.id}>
            <th scope="row">
              {person.name} {person.id === me ? <span className="soft">{t('people.you')}</span> : null}
            </th>
            <td>{t(`common.role.${person.role}`)}</td>
            <td>{person.email ?? t('common.none')}</td>
            {mayChange ? (
              <td>
                <div className="row">
                  {person.role === 'owner' && keepers === 1 ? (
                    <span className="soft">{t('people.onlyOne')}</span>
                  ) : (
                    <Button
                      aria-label={t('people.removeNamed', { name: person.name })}
                      onPress={() => setLeaving(person)}
                    >
                      {t('common.remove')}
                    </Button>
                  )}
                  {/* Without an account there is no password. */}
                  {person.id === me || person.email === null ? null : (
                    <Button
                      look="quiet"
                      aria-label={t('people.password.openNamed', { name: person.name })}
                      onPress={() => setLost(person)}
                    >
                      {t('people.password.open')}
                    </Button>
                  )}
                </div>
              </td>
            ) : null}
          </tr>
        ))}
        {invited.map((one) => (
          <InvitedRow key={one.id} invited={one} mayChange={mayChange} />
        ))}
      </Table>
      <RemovePerson person={leaving} onDone={() => setLeaving(null)} />
      {lost ? <PasswordLink person={lost} onClose={() => setLost(null)} /> : null}
    </>
  );
}

function RemovePerson({ person, onDone }: { person: PersonInHouseView | null; onDone: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const remove = useMutation({
    mutationFn: (id: string) => call('removePerson', { params: { house, person: id } }),
    onSuccess: async () => {
      onDone();
      await client.invalidateQueries({ queryKey: keys.allOf(house) });
    },
  });
  return (
    <Confirm
      title={t('people.removeTitle', { name: person?.name ?? '' })}
      text={t('people.removeText')}
      yes={t('people.removeYes')}
      isOpen={person !== null}
      isPending={remove.isPending}
      error={remove.error}
      onYes={() => person && remove.mutate(person.id)}
      onClose={() => {
        onDone();
        remove.reset();
      }}
    />
  );
}
