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

/** The translating function, typed by the English catalogs. */
export type Words = TFunction<'words'>;
