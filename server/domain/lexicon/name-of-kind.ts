import type { Kind } from './kind.ts';

/** Kanji with romaji and gloss in English, kanji with kana in Japanese; the crew's own kinds may lack some of the names. */
export function nameOfKind({ kanji, kana, romaji, en }: Kind, lang: 'en' | 'ja'): string {
  if (lang === 'en') return [`${kanji} ${romaji}`.trim(), en].filter(Boolean).join(', ');
  if (kanji === '') return kana || en;
  return kana === '' || kanji === kana ? kanji : `${kanji}（${kana}）`;
}
