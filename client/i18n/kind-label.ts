import { kindIn, type Lexicon } from '#domain/lexicon/make-lexicon';
import { nameOfKind } from '#domain/lexicon/name-of-kind';
import type { Language } from './language.ts';

export { nameOfKind };

/**
 * A kind as plain text, for titles, choices and names that are read aloud: kanji with romaji and gloss in
 * English, kanji with kana in Japanese. What the lexicon does not know stays as it was written.
 */
export function kindLabel(kind: string, lang: Language, lexicon: Lexicon): string {
  const known = kindIn(lexicon, kind);
  return known ? nameOfKind(known, lang) : kind;
}

/** Of these things, in the order in which they are shown, the first of each kind: there the reading stands with it. */
export function firstOfKind<T extends { readonly kind: string }>(
  things: Iterable<T>,
  lexicon: Lexicon,
): ReadonlySet<T> {
  const written = new Set<string>();
  const seen = new Set<string>();
  const first = new Set<T>();
  for (const thing of things) {
    // Of thousands of things few are written differently.
    if (written.has(thing.kind)) continue;
    written.add(thing.kind);
    const id = kindIn(lexicon, thing.kind)?.id ?? thing.kind;
    if (!seen.has(id)) first.add(thing);
    seen.add(id);
  }
  return first;
}
