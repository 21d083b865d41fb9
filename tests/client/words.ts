import i18next from 'i18next';
import { en } from '../../client/i18n/en.ts';
import { enLater } from '../../client/i18n/en-later.ts';
import { ja } from '../../client/i18n/ja.ts';
import { jaLater } from '../../client/i18n/ja-later.ts';
import type { Language } from '../../client/i18n/language.ts';
import { oneStop } from '../../client/i18n/one-stop.ts';
import type { Words } from '../../client/i18n/words.ts';

/** The translating function of one language, as the browser has it. */
export async function wordsOf(lang: Language): Promise<Words> {
  const instance = i18next.createInstance();
  await instance.use(oneStop).init({
    showSupportNotice: false,
    defaultNS: 'words',
    ns: ['words'],
    resources: { en: { words: { ...en, ...enLater } }, ja: { words: { ...ja, ...jaLater } } },
    lng: lang,
    interpolation: { escapeValue: false },
    postProcess: oneStop.name,
  });
  return instance.getFixedT(lang, 'words');
}

export const LANGUAGES = ['en', 'ja'] as const;
