import { KANJI_NUMERALS, parseKanjiNumber } from '#domain/frame/kanji-number';

const LAST_NUMBER = new RegExp(`([0-9]+|[${KANJI_NUMERALS}]+)(?![\\s\\S]*[0-9${KANJI_NUMERALS}])`, 'u');

/**
 * The mark that is likely to come after this one: its last number is one higher, い二 → い三. Leading
 * zeros and the way of writing (digits, 二十三, 二三, 廿三) stay. Null where no number can be counted on.
 */
export function nextMark(mark: string): string | null {
  const match = LAST_NUMBER.exec(mark);
  const number = match?.[1];
  if (match === null || number === undefined) return null;
  const next = /^[0-9]/.test(number) ? nextDigits(number) : nextKanji(number);
  return next === null ? null : mark.slice(0, match.index) + next + mark.slice(match.index + number.length);
}

function nextDigits(digits: string): string | null {
  const next = Number(digits) + 1;
  return Number.isSafeInteger(next) ? String(next).padStart(digits.length, '0') : null;
}

/** 壱 and 弐 are written so that nobody makes a 二 of a 一; 四 and up have no such form in use. */
const FORMAL: Readonly<Record<string, string>> = { 壱: '弐', 弐: '参' };

function nextKanji(signs: string): string | null {
  const value = parseKanjiNumber(signs);
  if (value === null || value >= 9999) return null;
  const last = [...signs].at(-1) ?? '';
  const formal = FORMAL[last];
  if (formal) return signs.slice(0, -last.length) + formal;
  if (/[廿卅]/u.test(signs)) return withOldTens(value + 1);
  const isPositional = [...signs].length > 1 && !/[十百千]/u.test(signs);
  return isPositional ? positional(value + 1, signs) : withUnits(value + 1);
}

const DIGITS = [...'〇一二三四五六七八九'];
const digit = (value: number) => DIGITS[value] ?? '';

function positional(value: number, like: string): string {
  const zero = like.includes('零') ? '零' : '〇';
  const signs = [...String(value)].map((d) => (d === '0' ? zero : digit(Number(d)))).join('');
  return signs.padStart([...like].length, zero);
}

function withUnits(value: number): string {
  const units = [
    [1000, '千'],
    [100, '百'],
    [10, '十'],
  ] as const;
  let rest = value;
  let text = '';
  for (const [size, sign] of units) {
    const times = Math.floor(rest / size);
    if (times > 0) text += (times === 1 ? '' : digit(times)) + sign;
    rest %= size;
  }
  return text + (rest > 0 ? digit(rest) : '');
}

function withOldTens(value: number): string {
  const sign = { 2: '廿', 3: '卅' }[Math.floor(value / 10)];
  return sign === undefined ? withUnits(value) : sign + (value % 10 > 0 ? digit(value % 10) : '');
}
