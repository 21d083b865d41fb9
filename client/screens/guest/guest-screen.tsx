import { useMemo, type ReactNode } from 'react';
import { useQuery } from '@tanstack/react-query';
import { useParams } from 'react-router';
import type { GuestPageView } from '#domain/contract/guests';
import { makeLexicon } from '#domain/lexicon/make-lexicon';
import { call, ProblemError } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { kindsQuery } from '../../api/kinds-query.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { Content } from '../../shell/content.tsx';
import { LanguageSwitch } from '../../shell/language-switch.tsx';
import { LexiconContext } from '../../shell/use-lexicon.ts';
import { GuestCovering } from './guest-covering.tsx';
import { GuestMember } from './guest-member.tsx';
import './guest.css';

/** All that a guest link shows. It stands by itself: nothing on it leads further into the record. */
export function GuestScreen() {
  const { secret = '' } = useParams();
  const query = useQuery({
    queryKey: keys.guestPage(secret),
    queryFn: ({ signal }) => call('readGuestPage', { params: { secret }, signal }),
  });
  const isDead = query.error instanceof ProblemError && query.error.problem.code === 'not-found';
  return (
    <GuestFrame>
      {isDead ? (
        <DeadLink />
      ) : (
        <QueryState query={query}>{(facts) => <GuestPage secret={secret} facts={facts} />}</QueryState>
      )}
    </GuestFrame>
  );
}

function GuestFrame({ children }: { children: ReactNode }) {
  const { t } = useWords();
  const kinds = useQuery(kindsQuery).data;
  // The crew's own words are the house's, and not shown.
  const lexicon = useMemo(() => makeLexicon(kinds ?? [], []), [kinds]);
  return (
    <LexiconContext value={lexicon}>
      <header className="header">
        <span className="header-name">{t('common.name')}</span>
        <div className="header-end">
          <LanguageSwitch />
        </div>
      </header>
      <div className="content">
        <Content>{children}</Content>
      </div>
    </LexiconContext>
  );
}

function GuestPage({ secret, facts }: { secret: string; facts: GuestPageView }) {
  const { t, lang } = useWords();
  const { house, zone, label, until, page } = facts;
  const name = page.shows === 'covering' ? page.name : page.mark;
  return (
    <Page title={name} lead={t('guest.forWhom', { label, when: formatInstant(until, zone, lang) })}>
      {page.shows === 'covering' ? (
        <GuestCovering secret={secret} house={house} zone={zone} covering={page} />
      ) : (
        <GuestMember secret={secret} house={house} zone={zone} member={page} />
      )}
      <p className="soft guest-caution">
        {t('common.peggedMeans')} {t('guest.caution')}
      </p>
    </Page>
  );
}

function DeadLink() {
  const { t } = useWords();
  return (
    <Page title={t('guest.deadTitle')}>
      <p className="lead">{t('guest.dead')}</p>
    </Page>
  );
}
