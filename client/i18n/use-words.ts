import { useTranslation } from 'react-i18next';
import { isLanguage, storeLanguage, type Language } from './language.ts';
import { speak } from './start.ts';
import type { Words } from './words.ts';

export interface WordsInUse {
  readonly t: Words;
  readonly lang: Language;
  readonly setLang: (lang: Language) => void;
}

export function useWords(): WordsInUse {
  const { t, i18n } = useTranslation('words');
  const lang = isLanguage(i18n.resolvedLanguage) ? i18n.resolvedLanguage : 'en';
  const setLang = (next: Language) => {
    storeLanguage(next);
    void speak(next);
  };
  return { t, lang, setLang };
}
