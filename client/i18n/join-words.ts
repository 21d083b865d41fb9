import type { Language } from './language.ts';

/** Puts what there is in a row, with the comma of the language. */
export function joinWords(parts: readonly (string | null)[], lang: Language): string {
  return parts.filter((part) => part !== null && part !== '').join(lang === 'ja' ? '、' : ', ');
}
