import { useParams } from 'react-router';
import type { ProtectionView } from '#domain/contract/protection';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { Spinner } from '../../parts/spinner.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { useMembers } from '../../finding/use-members.ts';
import { ProtectionForm } from './protection-form.tsx';
import { useProtections } from './use-protections.ts';
import '../coverings/coverings.css';

/** Says that protection was laid, or corrects what the address names. */
export function ProtectionFormScreen() {
  const { id: house } = useHouse();
  const { protection: id } = useParams();
  const query = useProtections(house, false);
  if (id === undefined) return <FormPage protection={null} />;
  return (
    <QueryState query={query}>
      {({ protections }) => {
        const protection = protections.find((one) => one.id === id);
        return protection ? <FormPage protection={protection} /> : <NotFound />;
      }}
    </QueryState>
  );
}

function FormPage({ protection }: { protection: ProtectionView | null }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { index, isLoaded } = useMembers(house);
  const title = protection
    ? t('protection.form.changeTitle', { name: protection.name })
    : t('protection.form.newTitle');
  const crumb = { to: `/houses/${house}/coverings`, label: t('common.nav.coverings') };
  return (
    <Page title={title} lead={t('protection.caution')} breadcrumb={[crumb]}>
      {isLoaded ? <ProtectionForm protection={protection} index={index} /> : <Spinner />}
    </Page>
  );
}
