import i18next from 'i18next';
import { initReactI18next } from 'react-i18next';
import { en, ja } from './catalogs.ts';
import { initialLanguage, readStoredLanguage } from './language.ts';

/** Both catalogs are in the bundle: a switch of language needs no network. */
export function startWords(): void {
  i18next.on('languageChanged', (language) => {
    document.documentElement.lang = language;
  });
  void i18next.use(initReactI18next).init({
    initAsync: false,
    showSupportNotice: false,
    defaultNS: 'words',
    ns: ['words'],
    resources: { en: { words: en }, ja: { words: ja } },
    lng: initialLanguage(readStoredLanguage(), navigator.languages),
    fallbackLng: 'en',
    interpolation: { escapeValue: false },
  });
}
