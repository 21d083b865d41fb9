import { findKind } from '#domain/lexicon/track-of-kind';
import type { Language } from './language.ts';

/**
 * A kind as the reader knows it: kanji with romaji and gloss in English, kanji with kana in Japanese.
 * What the lexicon does not know stays as it was written.
 */
export function kindLabel(kind: string, lang: Language): string {
  const known = findKind(kind);
  if (!known) return kind;
  if (lang === 'en') return `${known.kanji} ${known.romaji}, ${known.en}`;
  return known.kanji === known.kana ? known.kanji : `${known.kanji}（${known.kana}）`;
}
