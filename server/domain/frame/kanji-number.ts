const DIGITS: Readonly<Record<string, number>> = {
  〇: 0,
  零: 0,
  一: 1,
  二: 2,
  三: 3,
  四: 4,
  五: 5,
  六: 6,
  七: 7,
  八: 8,
  九: 9,
  壱: 1,
  弐: 2,
  参: 3,
};
const TENS: Readonly<Record<string, number>> = { 廿: 20, 卅: 30 };
const UNITS: Readonly<Record<string, number>> = { 十: 10, 百: 100, 千: 1000 };

export const KANJI_NUMERALS = [...Object.keys(DIGITS), ...Object.keys(TENS), ...Object.keys(UNITS)].join('');

/**
 * Value of a run of kanji numerals below 10,000, written with units (二十三), with the old 廿 and 卅,
 * or digit by digit (二三); null where the signs do not make a number (十十). Common practice.
 */
export function parseKanjiNumber(text: string): number | null {
  const signs = [...text];
  if (signs.length === 0) return null;
  if (signs.every((sign) => sign in DIGITS)) return positional(signs);
  return withUnits(signs);
}

function positional(signs: readonly string[]): number {
  return signs.reduce((value, sign) => value * 10 + (DIGITS[sign] ?? 0), 0);
}

function withUnits(signs: readonly string[]): number | null {
  let value = 0;
  let digit: number | null = null;
  let smallestUnit = Infinity;
  for (const sign of signs) {
    if (sign in DIGITS) {
      if (digit !== null) return null;
      digit = DIGITS[sign] ?? 0;
      continue;
    }
    const unit = sign in TENS ? 10 : UNITS[sign];
    if (unit === undefined || unit >= smallestUnit || (sign in TENS && digit !== null)) return null;
    value += TENS[sign] ?? (digit ?? 1) * unit;
    smallestUnit = unit;
    digit = null;
  }
  return value + (digit ?? 0);
}
