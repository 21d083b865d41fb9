import type { TFunction } from 'i18next';
import type { TranslationOf } from './catalog.ts';
import type { en } from './en.ts';

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'words';
    resources: { words: TranslationOf<typeof en> };
  }
}

/** The translating function, typed by the English catalogs. */
export type Words = TFunction<'words'>;
