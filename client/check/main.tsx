import i18next from 'i18next';
import { StrictMode, useEffect, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { check as en } from '../i18n/en/check.ts';
import { check as ja } from '../i18n/ja/check.ts';
import { common as enCommon } from '../i18n/en/common.ts';
import { common as jaCommon } from '../i18n/ja/common.ts';
import { LANGUAGES, initialLanguage } from '../i18n/language.ts';
import { oneStop } from '../i18n/one-stop.ts';
import { checkHeading } from './check-heading.ts';
import { Notice } from '../parts/plain-notice.tsx';
import { CheckPanel } from './check-panel.tsx';
import '../style/index.css';

/** The page that lies in every archive: all in one file, without a server, in whatever browser there will be. */

function CheckPage() {
  const [lang, setLang] = useState(() => initialLanguage(null, navigator.languages));
  const [search] = useState(() => new URLSearchParams(window.location.search));
  const t = i18next.getFixedT(lang, 'words');
  const { title, lead } = checkHeading(t, search);
  useEffect(() => {
    document.documentElement.lang = lang;
    document.title = title;
  }, [lang, title]);
  return (
    <main className="page check-page">
      <div
        className="language-switch"
        role="group"
        aria-label={LANGUAGES.map((one) => enCommon.languageName[one]).join(' / ')}
      >
        {LANGUAGES.map((one) => (
          <button key={one} type="button" lang={one} aria-pressed={one === lang} onClick={() => setLang(one)}>
            {enCommon.languageName[one]}
          </button>
        ))}
      </div>
      <h1>{title}</h1>
      <p className="lead">{lead}</p>
      <Notice>
        <p>{t('check.ownPage')}</p>
      </Notice>
      <CheckPanel {...{ t, lang, search }} />
    </main>
  );
}

const root = document.getElementById('root');
if (!root) throw new Error('The page has no #root.');
void i18next
  .init({
    resources: {
      en: { words: { check: en, common: enCommon } },
      ja: { words: { check: ja, common: jaCommon } },
    },
    ns: ['words'],
    defaultNS: 'words',
    fallbackLng: false,
    showSupportNotice: false,
    interpolation: { escapeValue: false },
    postProcess: oneStop.name,
  })
  .then(() =>
    createRoot(root).render(
      <StrictMode>
        <CheckPage />
      </StrictMode>,
    ),
  );
