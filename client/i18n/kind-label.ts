import { findKind } from '#domain/lexicon/track-of-kind';
import type { Language } from './language.ts';

/**
 * A kind as plain text, for titles, choices and names that are read aloud: kanji with romaji and gloss in
 * English, kanji with kana in Japanese. What the lexicon does not know stays as it was written.
 */
export function kindLabel(kind: string, lang: Language): string {
  const known = findKind(kind);
  if (!known) return kind;
  if (lang === 'en') return `${known.kanji} ${known.romaji}, ${known.en}`;
  return known.kanji === known.kana ? known.kanji : `${known.kanji}（${known.kana}）`;
}

/** Of these things, in the order in which they are shown, the first of each kind: there the reading stands with it. */
export function firstOfKind<T extends { readonly kind: string }>(things: Iterable<T>): ReadonlySet<T> {
  const seen = new Set<string>();
  const first = new Set<T>();
  for (const thing of things) {
    const id = findKind(thing.kind)?.id ?? thing.kind;
    if (!seen.has(id)) first.add(thing);
    seen.add(id);
  }
  return first;
}
