import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { AdmitGuest } from './admit-guest.tsx';
import { GuestTable } from './guest-table.tsx';

export function GuestSection() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const query = useQuery({
    queryKey: keys.guests(house),
    queryFn: ({ signal }) => call('listGuests', { params: { house }, signal }),
  });
  return (
    <section className="section">
      <h2>{t('people.guests.title')}</h2>
      <p className="lead">{t('people.guests.lead')}</p>
      <QueryState query={query}>
        {({ guests }) =>
          guests.length === 0 ? (
            <p className="soft">{t('people.guests.none')}</p>
          ) : (
            <GuestTable guests={guests} />
          )
        }
      </QueryState>
      <AdmitGuest />
    </section>
  );
}
