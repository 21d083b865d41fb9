import { useParams, useSearchParams } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { Spinner } from '../../parts/spinner.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useMembers } from '../../finding/use-members.ts';
import { CoveringForm, type CoveringFormProps } from './covering-form.tsx';
import { useCoverings } from './use-coverings.ts';
import './coverings.css';

/** Plans a covering, or changes one that the address names; with `?over` one more layer at the place of that. */
export function CoveringFormScreen() {
  const { id: house } = useHouse();
  const { covering: id } = useParams();
  const [search] = useSearchParams();
  const over = search.get('over');
  const query = useCoverings(house);
  if (id === undefined && over === null) return <FormPage covering={null} />;
  return (
    <QueryState query={query}>
      {({ coverings }) => {
        const found = coverings.find((c) => c.id === (id ?? over));
        if (!found) return <NotFound />;
        return id === undefined ? <FormPage covering={null} over={found} /> : <FormPage covering={found} />;
      }}
    </QueryState>
  );
}

function FormPage({ covering, over = null }: Pick<CoveringFormProps, 'covering' | 'over'>) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { index, isLoaded } = useMembers(house);
  const list = `/houses/${house}/coverings`;
  const crumb = covering
    ? { to: `${list}/${covering.id}`, label: covering.name }
    : { to: list, label: t('common.nav.coverings') };
  const title = covering
    ? t('coverings.form.changeTitle', { name: covering.name })
    : t('coverings.form.newTitle');
  return (
    <Page title={title} breadcrumb={[crumb]}>
      {isLoaded ? <CoveringForm covering={covering} over={over} index={index} /> : <Spinner />}
    </Page>
  );
}
