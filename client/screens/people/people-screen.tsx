import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { AddPerson } from './add-person.tsx';
import { GuestSection } from './guest-section.tsx';
import { PeopleTable } from './people-table.tsx';

export function PeopleScreen() {
  const { t } = useWords();
  const house = useHouse();
  const isKeeper = house.role === 'owner';
  const query = useQuery({
    queryKey: keys.people(house.id),
    queryFn: ({ signal }) => call('listPeople', { params: { house: house.id }, signal }),
  });
  return (
    <Page title={t('people.title')} lead={t('people.lead')}>
      <QueryState query={query}>
        {({ people, invited }) => <PeopleTable people={people} invited={invited} mayChange={isKeeper} />}
      </QueryState>
      {isKeeper ? (
        <>
          <AddPerson />
          <GuestSection />
        </>
      ) : (
        <Notice>{t('people.onlyKeeper')}</Notice>
      )}
    </Page>
  );
}
