import { toHiragana } from 'wanakana';
import { KANJI_NUMERALS, parseKanjiNumber } from '#domain/frame/kanji-number';
import { plainMark } from '#domain/frame/mark-order';
import { hiragana } from '#domain/lexicon/hiragana';

const NUMERALS = new RegExp(`[${KANJI_NUMERALS}]+`, 'gu');
const SEPARATORS = /[\s\-_.,/·・、()]+/gu;

/**
 * How a mark is read, so that it is found however it is typed: い三, イ3, いの三, i-3 and i3 are all い3. Romaji
 * as every Japanese keyboard takes it (ti and chi are ち), kanji numerals by value, 又 as また.
 */
export function markReading(text: string): string {
  const digits = plainMark(text).replace(NUMERALS, (signs) => String(parseKanjiNumber(signs) ?? signs));
  const plain = hiragana(digits.replaceAll('又', 'また').replace(SEPARATORS, ''));
  return /[a-z]/.test(plain) ? toHiragana(plain) : plain;
}
