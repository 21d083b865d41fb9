import { useWords } from '../i18n/use-words.ts';
import { LinkButton } from '../parts/button.tsx';
import { EmptyState } from '../parts/empty-state.tsx';
import { Page } from '../parts/page.tsx';

export function NotFound() {
  const { t } = useWords();
  return (
    <Page title={t('common.notFound.title')}>
      <EmptyState
        title={t('common.notFound.text')}
        action={<LinkButton to="/">{t('common.notFound.home')}</LinkButton>}
      />
    </Page>
  );
}
