import { useWords } from '../i18n/use-words.ts';
import { LinkButton } from '../parts/button.tsx';
import { EmptyState } from '../parts/empty-state.tsx';
import { Page } from '../parts/page.tsx';
import { useHouse } from './use-house.ts';

/** In place of a form whose saving would be refused. */
export function NotYourRole() {
  const { t } = useWords();
  const { id: house, role } = useHouse();
  return (
    <Page title={t('roles.title')}>
      <EmptyState
        title={t('roles.text', { role: t(`common.role.${role}`) })}
        action={<LinkButton to={`/houses/${house}`}>{t('common.nav.journal')}</LinkButton>}
      />
    </Page>
  );
}
