import { useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { HouseForm } from './house-form.tsx';
import { HouseList } from './house-list.tsx';

export function HousesScreen() {
  const { t } = useWords();
  const [isOpening, setIsOpening] = useState(false);
  const query = useQuery({ queryKey: keys.houses, queryFn: ({ signal }) => call('listHouses', { signal }) });
  const isEmpty = query.data?.houses.length === 0;
  const showsForm = isOpening || isEmpty;
  return (
    <Page
      title={t('houses.title')}
      actions={
        query.data && !showsForm ? (
          <Button look="act" onPress={() => setIsOpening(true)}>
            {t('houses.open')}
          </Button>
        ) : null
      }
    >
      <QueryState query={query}>
        {({ houses }) => (
          <>
            {isEmpty ? <EmptyState title={t('houses.none')}>{t('houses.noneText')}</EmptyState> : null}
            {showsForm ? <HouseForm onCancel={isEmpty ? null : () => setIsOpening(false)} /> : null}
            {isEmpty ? null : <HouseList houses={houses} />}
          </>
        )}
      </QueryState>
      <p className="lead">{t('common.caution')}</p>
    </Page>
  );
}
