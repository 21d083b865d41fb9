import { useEffect, useRef } from 'react';
import { I18nProvider } from 'react-aria-components';
import { Outlet, ScrollRestoration, useLocation, useMatch, useNavigation } from 'react-router';
import { LOCALES } from '../i18n/format.ts';
import { useSharedSession } from '../api/use-session.ts';
import { useSending } from '../upload/use-uploads.ts';
import { useWords } from '../i18n/use-words.ts';
import { Header } from './header.tsx';
import { CONTENT_ADDRESS, Content, focusContent } from './content.tsx';
import { useKeptFocus } from './keep-focus.ts';
import { SignedOutNotice } from './signed-out-notice.tsx';
import { UnsentEverywhere } from './unsent-everywhere.tsx';

/** Header and content of every screen. After a change of screen the focus goes to the content. */
export function Frame() {
  const { t, lang } = useWords();
  const { pathname } = useLocation();
  const isLoading = useNavigation().state === 'loading';
  useSharedSession();
  useSending();
  // Its frame draws the menu first.
  const isInHouse = useMatch('/houses/:house/*') !== null;
  const shown = useRef(pathname);
  useKeptFocus();
  useEffect(() => {
    if (shown.current === pathname) return;
    shown.current = pathname;
    focusContent();
  }, [pathname]);
  return (
    <I18nProvider locale={LOCALES[lang]}>
      <a className="skip-link" href={CONTENT_ADDRESS}>
        {t('common.skip')}
      </a>
      <SkipToPicture />
      <Header />
      <div className="content" aria-busy={isLoading}>
        <UnsentEverywhere />
        {isInHouse ? (
          <Outlet />
        ) : (
          <Content>
            <Outlet />
          </Content>
        )}
      </div>
      <SignedOutNotice />
      <ScrollRestoration />
    </I18nProvider>
  );
}

/** At the bench: past the tools to the picture, where the keys work. */
function SkipToPicture() {
  const { t } = useWords();
  if (!useMatch('/houses/:house/photos/:photo')) return null;
  return (
    <a className="skip-link" href="#picture">
      {t('common.skipToPicture')}
    </a>
  );
}
