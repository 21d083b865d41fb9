import type { TranslationOf } from './catalog.ts';
import type { en } from './en.ts';
import type { Language } from './language.ts';

/** The words of one language; fetched by themselves, since nobody reads both at once. */
const CATALOGS: Readonly<Record<Language, () => Promise<TranslationOf<typeof en>>>> = {
  en: async () => (await import('./en.ts')).en,
  ja: async () => (await import('./ja.ts')).ja,
};

const AGAIN_MS = 2000;

/** Without words there is nothing to show, so it is asked for until it comes. */
export async function loadCatalog(language: Language): Promise<TranslationOf<typeof en>> {
  for (;;) {
    try {
      return await CATALOGS[language]();
    } catch {
      await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
    }
  }
}
