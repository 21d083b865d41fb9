import type { Brand } from '../brand.ts';
import { KANJI_NUMERALS, parseKanjiNumber } from './kanji-number.ts';

/** Millimetres in house coordinates, or a length of a member. */
export type Mm = Brand<number, 'Mm'>;

/**
 * Millimetres of a shaku (曲尺): 10/33 m by Japan's weights and measures law of 1891. A ken is six shaku,
 * a sun a tenth, a bu a hundredth.
 */
export const SHAKU_MM = 10_000 / 33;
const KEN_MM = 6 * SHAKU_MM;
const INCH_MM = 25.4;

/** What a bare number means where a house writes its lengths. */
export const LENGTH_UNITS = ['mm', 'shaku', 'inch'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

const MM_OF_UNIT: Readonly<Record<LengthUnit, number>> = { mm: 1, shaku: SHAKU_MM, inch: INCH_MM };

const MM_OF_WORD: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  間: KEN_MM,
  ken: KEN_MM,
  尺: SHAKU_MM,
  shaku: SHAKU_MM,
  寸: SHAKU_MM / 10,
  sun: SHAKU_MM / 10,
  分: SHAKU_MM / 100,
  bu: SHAKU_MM / 100,
  "'": 12 * INCH_MM,
  ft: 12 * INCH_MM,
  '"': INCH_MM,
  in: INCH_MM,
};

/** Only with these may a number be in kanji, or a half stand before or behind (半間, 一間半): common practice. */
const KANJI_UNITS = ['間', '尺', '寸', '分'];

const PIECE = new RegExp(
  `(\\d+(?:\\.\\d+)?|\\.\\d+|[${KANJI_NUMERALS}]+|半)\\s*(${Object.keys(MM_OF_WORD)
    .sort((a, b) => b.length - a.length)
    .join('|')})\\s*(半?)\\s*`,
  'gu',
);
const BARE = /^(?:\d+(?:\.\d+)?|\.\d+)$/u;

/**
 * A length as people write it, in mm: 5460, 5.46 m, 3尺5寸, 三尺五寸, 1.5間, 一間半, 12'6"; a bare
 * number in `unit`. A sign before it counts for all of it. null where it is no length.
 */
export function parseLength(text: string, unit: LengthUnit = 'mm'): Mm | null {
  const plain = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[′’]/gu, "'")
    .replace(/[″”]/gu, '"')
    .replace(/(?<=\d),(?=\d{3}(?!\d))/gu, '')
    .trim();
  const isBelow = /^[-−‐]/u.test(plain);
  const size = parseSize(plain.replace(/^[-+−‐±]\s*/u, ''), unit);
  if (size === null) return null;
  return roundMm(isBelow ? -size : size);
}

function parseSize(text: string, unit: LengthUnit): number | null {
  if (BARE.test(text)) return Number(text) * MM_OF_UNIT[unit];
  let sum = 0;
  let smallest = Infinity;
  let read = 0;
  for (const match of text.matchAll(PIECE)) {
    const [all, number = '', word = '', half] = match;
    const count = BARE.test(number) ? Number(number) : kanjiCount(number);
    const worth = MM_OF_WORD[word] ?? NaN;
    if (match.index !== read || count === null || worth >= smallest) return null;
    if ((half || !BARE.test(number)) && !KANJI_UNITS.includes(word)) return null;
    if (half && count % 1 !== 0) return null;
    sum += (count + (half ? 0.5 : 0)) * worth;
    // Behind a half nothing follows.
    smallest = half ? 0 : worth;
    read += all.length;
  }
  return read === text.length && read > 0 ? sum : null;
}

const kanjiCount = (kanji: string) => (kanji === '半' ? 0.5 : parseKanjiNumber(kanji));

/** To a thousandth of a millimetre, so that equal lengths in other units are equal. */
export function roundMm(value: number): Mm {
  return (Math.round(value * 1000) / 1000 || 0) as Mm;
}

/** A length as a bare number in `unit`, which parses back as itself to within a hundredth of a millimetre. */
export function lengthText(mm: number, unit: LengthUnit): string {
  return String(Number((mm / MM_OF_UNIT[unit]).toFixed(unit === 'mm' ? 3 : 5)));
}
