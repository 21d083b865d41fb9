import { useState } from 'react';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { GuestView } from '#domain/contract/guests';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Confirm } from '../../parts/confirm.tsx';
import { Table } from '../../parts/table.tsx';
import { useHouse } from '../../shell/use-house.ts';

export function GuestTable({ guests }: { guests: readonly GuestView[] }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const [ending, setEnding] = useState<GuestView | null>(null);
  const time = (at: string) => formatInstant(at, zone, lang);
  const lastUse = (at: string | null) => (at === null ? t('people.guests.never') : time(at));
  const { label, what, until, used } = t('people.guests', { returnObjects: true });
  return (
    <>
      <Table
        label={t('people.guests.list')}
        hideLabel
        headings={[label, what, until, used, t('people.action')]}
        onPhone="blocks"
      >
        {guests.map((guest) => (
          <tr key={guest.id}>
            <th scope="row">{guest.label}</th>
            <td data-label={what}>{guest.name}</td>
            <td data-label={until}>
              {time(guest.until)}
              {guest.by === null ? null : (
                <div className="soft">{t('people.guests.by', { name: guest.by })}</div>
              )}
            </td>
            <td data-label={used}>
              {guest.opensHere ? lastUse(guest.lastUsedAt) : t('people.guests.notHere')}
            </td>
            <td>
              <Button
                look="danger"
                aria-label={t('people.guests.endNamed', { label: guest.label })}
                onPress={() => setEnding(guest)}
              >
                {t('people.guests.end')}
              </Button>
            </td>
          </tr>
        ))}
      </Table>
      {ending ? <EndGuest guest={ending} onDone={() => setEnding(null)} /> : null}
    </>
  );
}

function EndGuest({ guest: { id, label }, onDone }: { guest: GuestView; onDone: () => void }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const client = useQueryClient();
  const end = useMutation({
    mutationFn: () => call('endGuest', { params: { house, guest: id } }),
    onSuccess: async () => {
      onDone();
      await client.invalidateQueries({ queryKey: keys.people(house) });
    },
  });
  return (
    <Confirm
      title={t('people.guests.endTitle', { label })}
      text={t('people.guests.endText')}
      yes={t('people.guests.end')}
      isOpen
      isPending={end.isPending}
      error={end.error}
      onYes={() => end.mutate()}
      onClose={onDone}
    />
  );
}
