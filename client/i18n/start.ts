import i18next from 'i18next';
import { initReactI18next } from 'react-i18next';
import { loadCatalog, loadLater } from './catalogs.ts';
import { initialLanguage, isLanguage, readStoredLanguage, type Language } from './language.ts';

let started: Promise<void> | undefined;

/** Resolves once there are words to show; the first screen asks for its own before the page does. */
export function startWords(): Promise<void> {
  started ??= start();
  return started;
}

async function start(): Promise<void> {
  const language = initialLanguage(readStoredLanguage(), navigator.languages);
  const words = await loadCatalog(language);
  i18next.on('languageChanged', (now) => {
    document.documentElement.lang = now;
  });
  await i18next.use(initReactI18next).init({
    initAsync: false,
    showSupportNotice: false,
    defaultNS: 'words',
    ns: ['words'],
    resources: { [language]: { words } },
    lng: language,
    // Both catalogs hold every word: a test compares them.
    fallbackLng: false,
    interpolation: { escapeValue: false },
  });
}

/** The words so far stay until the others are there. */
export async function speak(language: Language): Promise<void> {
  i18next.addResourceBundle(language, 'words', await loadCatalog(language));
  await addLater(language);
  await i18next.changeLanguage(language);
}

/** A screen that speaks words of the later catalog comes once those are there. */
export async function withLaterWords<T>(screen: Promise<T>): Promise<T> {
  const words = startWords().then(() => addLater(i18next.language));
  const [found] = await Promise.all([screen, words]);
  return found;
}

async function addLater(language: string): Promise<void> {
  if (isLanguage(language)) i18next.addResourceBundle(language, 'words', await loadLater(language));
}
