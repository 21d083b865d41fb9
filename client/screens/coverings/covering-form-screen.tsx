import { useParams } from 'react-router';
import type { CoveringView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { Spinner } from '../../parts/spinner.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useMembers } from '../../finding/use-members.ts';
import { CoveringForm } from './covering-form.tsx';
import { useCoverings } from './use-coverings.ts';
import './coverings.css';

/** Plans a covering, or changes one that the address names. */
export function CoveringFormScreen() {
  const { id: house } = useHouse();
  const { covering: id } = useParams();
  const query = useCoverings(house);
  if (id === undefined) return <FormPage covering={null} />;
  return (
    <QueryState query={query}>
      {({ coverings }) => {
        const covering = coverings.find((c) => c.id === id);
        return covering ? <FormPage covering={covering} /> : <NotFound />;
      }}
    </QueryState>
  );
}

function FormPage({ covering }: { covering: CoveringView | null }) {
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
      {isLoaded ? <CoveringForm covering={covering} index={index} /> : <Spinner />}
    </Page>
  );
}
