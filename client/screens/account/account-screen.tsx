import { useSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { PasswordSection } from './password-section.tsx';
import { SessionSection } from './session-section.tsx';
import { TokenSection } from './token-section.tsx';

export function AccountScreen() {
  const { t } = useWords();
  const account = useSession().data?.account;
  if (!account) return null;
  return (
    <Page title={t('password.account.title')} breadcrumb={[{ to: '/', label: t('common.nav.houses') }]}>
      <section className="section">
        <h2>{t('password.account.details')}</h2>
        <dl className="facts">
          <dt>{t('password.account.nameLabel')}</dt>
          <dd>{account.name}</dd>
          <dt>{t('account.signIn.email')}</dt>
          <dd>{account.email}</dd>
        </dl>
      </section>
      <PasswordSection />
      <SessionSection />
      <TokenSection />
    </Page>
  );
}
