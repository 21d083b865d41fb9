import i18next from 'i18next';
import { initReactI18next } from 'react-i18next';
import { loadCatalog, loadLater } from './catalogs.ts';
import { initialLanguage, isLanguage, readStoredLanguage, type Language } from './language.ts';
import { oneStop } from './one-stop.ts';

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
  await i18next
    .use(initReactI18next)
    .use(oneStop)
    .init({
      initAsync: false,
      showSupportNotice: false,
      defaultNS: 'words',
      ns: ['words'],
      resources: { [language]: { words } },
      lng: language,
      // Both catalogs hold every word: a test compares them.
      fallbackLng: false,
      interpolation: { escapeValue: false },
      postProcess: oneStop.name,
    });
}

/** The words so far stay until the others are there. */
export async function speak(language: Language): Promise<void> {
  i18next.addResourceBundle(language, 'words', await loadCatalog(language));
  if (speaksLater) await addLater(language);
  await i18next.changeLanguage(language);
}

/** A screen that speaks words of the later catalog comes once those are there. */
export async function withLaterWords<T>(screen: Promise<T>): Promise<T> {
  const [found] = await Promise.all([screen, speakLater()]);
  return found;
}

let speaksLater = false;

/** Resolves once the words of screens that are fetched later are there, too; from then on in every language. */
export async function speakLater(): Promise<void> {
  speaksLater = true;
  // The first screen is fetched beside the first words.
  if (!i18next.isInitialized)
    await new Promise<void>((resolve) => i18next.on('initialized', () => resolve()));
  for (let language = spoken(); !i18next.exists(LATER_WORD, { lng: language }); language = spoken())
    await addLater(language);
}

/** A word that only comes later. */
const LATER_WORD = 'shots.title';
const spoken = () => (isLanguage(i18next.language) ? i18next.language : 'en');

async function addLater(language: Language): Promise<void> {
  i18next.addResourceBundle(language, 'words', await loadLater(language));
}
