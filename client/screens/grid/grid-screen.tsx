import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { GridForm } from './grid-form.tsx';

/** Where the lines and levels of the house lie. */
export function GridScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const query = useQuery({
    queryKey: keys.grid(house),
    queryFn: ({ signal }) => call('readGrid', { params: { house }, signal }),
    // What is being typed is not to be replaced by what others state meanwhile.
    staleTime: Infinity,
  });
  return (
    <Page
      title={t('grid.title')}
      lead={t('grid.lead')}
      breadcrumb={[{ to: `/houses/${house}/settings`, label: t('houses.settings.title') }]}
    >
      <QueryState query={query}>{({ grid }) => <GridForm grid={grid} />}</QueryState>
      <Link className="alone" to={`/houses/${house}/schedule`}>
        {t('grid.toSchedule')}
      </Link>
    </Page>
  );
}
