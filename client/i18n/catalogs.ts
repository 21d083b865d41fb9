import type { TranslationOf } from './catalog.ts';
import type { en } from './en.ts';
import type { enLater } from './en-later.ts';
import type { Language } from './language.ts';

/** The words of one language; fetched by themselves, since nobody reads both at once. */
const CATALOGS: Readonly<Record<Language, () => Promise<TranslationOf<typeof en>>>> = {
  en: async () => (await import('./en.ts')).en,
  ja: async () => (await import('./ja.ts')).ja,
};

/** The rest of them: a first visit shows nothing that needs it. */
const LATER: Readonly<Record<Language, () => Promise<TranslationOf<typeof enLater>>>> = {
  en: async () => (await import('./en-later.ts')).enLater,
  ja: async () => (await import('./ja-later.ts')).jaLater,
};

const AGAIN_MS = 2000;

export const loadCatalog = (language: Language) => untilThere(CATALOGS[language]);
export const loadLater = (language: Language) => untilThere(LATER[language]);

/** Without words there is nothing to show, so they are asked for until they come. */
async function untilThere<T>(load: () => Promise<T>): Promise<T> {
  for (;;) {
    try {
      return await load();
    } catch {
      await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
    }
  }
}
