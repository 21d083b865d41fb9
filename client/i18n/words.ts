import type { TFunction } from 'i18next';
import type { TranslationOf } from './catalog.ts';
import type { en } from './en.ts';
import type { enLater } from './en-later.ts';

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'words';
    resources: { words: TranslationOf<typeof en & typeof enLater> };
  }
}

/**
 * The translating function, typed by the English catalogs. Those of `en-later` are there only on screens whose
 * route waits for them (i18n/start).
 */
export type Words = TFunction<'words'>;
