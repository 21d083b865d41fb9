import { lazy, Suspense } from 'react';
import { useQuery } from '@tanstack/react-query';
import { useParams } from 'react-router';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useSession } from '../../api/use-session.ts';
import { withLaterWords } from '../../i18n/start.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { Spinner } from '../../parts/spinner.tsx';
import { LinkForm } from './link-form.tsx';

/** Hardly anybody comes for this. */
const NewPassword = lazy(async () => ({
  default: (await withLaterWords(import('./new-password.tsx'))).NewPassword,
}));

export function LinkScreen() {
  const { t } = useWords();
  const { link = '' } = useParams();
  const account = useSession().data?.account;
  const query = useQuery({
    queryKey: keys.link(link),
    queryFn: ({ signal }) => call('readLink', { params: { link }, signal }),
    // Once it is used it must not be asked again: it would answer that it is used.
    staleTime: Infinity,
    refetchOnWindowFocus: false,
  });
  const looking = (
    <Page title={t('account.link.loading')}>
      <Spinner />
    </Page>
  );
  if (query.isPending) return looking;
  if (query.data?.purpose === 'new-password')
    return (
      <Suspense fallback={looking}>
        <NewPassword link={link} facts={query.data} />
      </Suspense>
    );
  const isJoining = query.data?.purpose === 'join-house';
  const role = query.data?.role ? t(`common.role.${query.data.role}`) : '';
  const title = isJoining
    ? t('account.link.joinTitle', { house: query.data?.house ?? '' })
    : t(query.isError ? 'account.link.deadTitle' : 'account.link.firstTitle');
  return (
    <Page title={title}>
      <QueryState query={query}>
        {(facts) => (
          <>
            <p className="lead">
              {isJoining ? t('account.link.joinLead', { role }) : t('account.link.firstLead')}
            </p>
            {account ? (
              <Notice actions={<LinkButton to="/">{t('account.link.openHouses')}</LinkButton>}>
                {t('account.link.signedIn', { name: account.name })}
              </Notice>
            ) : null}
            <LinkForm link={link} invited={facts.email} />
          </>
        )}
      </QueryState>
    </Page>
  );
}
