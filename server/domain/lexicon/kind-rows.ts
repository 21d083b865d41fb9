import { bareRomaji } from './bare-romaji.ts';
import type { Kind } from './kind.ts';

/** What the kinds of a table have in common, unless a row says otherwise. */
export type Usual = Pick<Kind, 'family' | 'track' | 'lies' | 'section' | 'hiddenBy'>;

/** Further spellings are parted by `|`. */
export type KindRow = readonly [
  kanji: string,
  kana: string,
  romaji: string,
  en: string,
  also?: string,
  own?: Partial<Usual>,
];

export function kindsOf(usual: Usual, rows: readonly KindRow[]): Kind[] {
  return rows.map(([kanji, kana, romaji, en, also = '', own]) => ({
    id: bareRomaji(romaji),
    ...{ kanji, kana, romaji, en },
    also: also === '' ? [] : also.split('|'),
    ...usual,
    ...own,
  }));
}

export const IN_WALL = ['plaster-between-posts', 'plaster-over-posts'] as const;
export const OVER_POSTS = ['plaster-over-posts'] as const;
