import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { kindsQuery } from '../../api/kinds-query.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { NeedsForm } from './needs-form.tsx';
import './needs.css';

/** What each form of covering hides in this house, and what must be on record of it. */
export function NeedsScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const kinds = useQuery(kindsQuery);
  const stated = useQuery({
    queryKey: keys.requirements(house),
    queryFn: ({ signal }) => call('readRequirements', { params: { house }, signal }),
    // What is being changed is not to be replaced by what others state meanwhile.
    staleTime: Infinity,
  });
  return (
    <Page
      title={t('needs.title')}
      lead={t('needs.lead')}
      breadcrumb={[{ to: `/houses/${house}/coverings`, label: t('common.nav.coverings') }]}
    >
      <QueryState query={kinds}>
        {() => <QueryState query={stated}>{({ rows }) => <NeedsForm rows={rows} />}</QueryState>}
      </QueryState>
    </Page>
  );
}
