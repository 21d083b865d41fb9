import type { Track } from '../frame/stage.ts';
import type { CoveringForm } from '../record/covering-form.ts';
import type { Family, Lies } from './family.ts';
import { bareRomaji } from './bare-romaji.ts';

/** One kind of member under its names. `also` holds further spellings that people type. */
export interface Kind {
  readonly id: string;
  readonly kanji: string;
  readonly kana: string;
  /** Hepburn. */
  readonly romaji: string;
  readonly en: string;
  readonly also: readonly string[];
  readonly family: Family;
  readonly track: Track;
  readonly lies: Lies;
  /** Usual mm: upright pieces width × depth in plan, others thickness × height; null: it varies too much. */
  readonly section: readonly [number, number] | null;
  /** The coverings that usually hide it. */
  readonly hiddenBy: readonly CoveringForm[];
}

/** All names of a kind, each once; what a crew has entered may lack some of them. */
export function spellings({
  kanji,
  kana,
  romaji,
  en,
  also,
}: Pick<Kind, 'kanji' | 'kana' | 'romaji' | 'en' | 'also'>): readonly string[] {
  return [...new Set([kanji, kana, romaji, bareRomaji(romaji), en, ...also])].filter((name) => name !== '');
}
