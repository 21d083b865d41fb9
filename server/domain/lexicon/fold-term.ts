import { hiragana } from './hiragana.ts';

/** NFKC (UAX #15), lower case, hiragana, single spaces: what makes two spellings the same word here. */
export function foldTerm(text: string): string {
  return hiragana(text.normalize('NFKC').toLowerCase()).replace(/\s+/gu, ' ').trim();
}
