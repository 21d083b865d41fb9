import { hiragana } from '../lexicon/hiragana.ts';
import { KANJI_NUMERALS, parseKanjiNumber } from './kanji-number.ts';

/** The 47 kana in iroha order (source: W3C CSS Counter Styles, hiragana-iroha), then ん as some carpenters add. */
export const IROHA =
  'いろはにほへとちりぬるをわかよたれそつねならむうゐのおくやまけふこえてあさきゆめみしゑひもせすん';

const irohaRank: ReadonlyMap<string, number> = new Map([...IROHA].map((kana, i) => [kana, i + 1]));

type Token =
  | { readonly is: 'number' | 'line'; readonly value: number }
  | { readonly is: 'text'; readonly value: string }
  | { readonly is: 'half' }
  | { readonly is: 'gap' };

/** Numbers before lines of the iroha, these before other text; half a bay behind other text is 0.5. */
export type Part = readonly [rank: 0 | 1, value: number] | readonly [rank: 2, value: string, half: 0 | 0.5];

export interface MarkKey {
  readonly parts: readonly Part[];
  readonly text: string;
}

const KANA = 'ぁ-ゖァ-ヶー';
const NUMBER = `[0-9${KANJI_NUMERALS}]`;
const SPOKEN_NO = new RegExp(`(?<![${KANA}])([${KANA}]又?)[のノ](?=又?${NUMBER})`, 'gu');
const PIECES = new RegExp(
  `(?<digits>[0-9]+)|(?<kanji>[${KANJI_NUMERALS}]+)|(?<half>又)|(?<kana>[${KANA}]+)|` +
    `(?<gap>[\\s\\-_.,/·・、()]+)|(?<text>[^0-9${KANJI_NUMERALS}又${KANA}\\s\\-_.,/·・、()]+)`,
  'gu',
);

/**
 * What a mark is sorted by. Digits and kanji numerals count by value and alike (3 = 三); a kana that
 * stands alone is a line of the iroha; 又 puts the number after it, else the line or number before it,
 * half a bay on (又四 lies between 四 and 五); の between line and number is only spoken (いの三 = い三).
 * Capitals and separators do not matter. Common practice of grid marks.
 */
export function markKey(text: string): MarkKey {
  const tokens = [...plainMark(text).matchAll(PIECES)].map((match) => token(match.groups ?? {}));
  return { parts: withHalfBays(tokens), text };
}

/** NFKC (UAX #15) in small letters, with a comma for a の that is only spoken. */
export function plainMark(text: string): string {
  return text.normalize('NFKC').toLowerCase().replace(SPOKEN_NO, '$1,');
}

/** Below 0 when `a` comes first; 0 only for the same text, so that every order is the only one. */
export function compareMarkKeys(a: MarkKey, b: MarkKey): number {
  for (let i = 0; i < Math.min(a.parts.length, b.parts.length); i += 1) {
    const order = compareParts(a.parts[i] as Part, b.parts[i] as Part);
    if (order !== 0) return order;
  }
  return a.parts.length - b.parts.length || compareText(a.text, b.text);
}

export function compareMarks(a: string, b: string): number {
  return compareMarkKeys(markKey(a), markKey(b));
}

/** By UTF-16 code units: the same on every machine, unlike a locale's order. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function token(found: Record<string, string | undefined>): Token {
  if (found['digits']) return { is: 'number', value: Number(found['digits']) };
  if (found['kanji']) return kanjiToken(found['kanji']);
  if (found['half']) return { is: 'half' };
  if (found['kana']) return kanaToken(found['kana']);
  return found['gap'] ? { is: 'gap' } : { is: 'text', value: found['text'] ?? '' };
}

function kanjiToken(signs: string): Token {
  const value = parseKanjiNumber(signs);
  return value === null ? { is: 'text', value: signs } : { is: 'number', value };
}

function kanaToken(kana: string): Token {
  const line = irohaRank.get(hiragana(kana));
  return line === undefined ? { is: 'text', value: kana } : { is: 'line', value: line };
}

function withHalfBays(tokens: readonly Token[]): Part[] {
  const parts: Part[] = [];
  let half = false;
  tokens.forEach((now, i) => {
    if (now.is === 'gap') return;
    if (now.is !== 'half') {
      parts.push(part(now, half));
      half = false;
    } else if (tokens[i + 1]?.is === 'number' || !moveLast(parts)) {
      half = true;
    }
  });
  return parts;
}

function part(now: Extract<Token, { value: unknown }>, half: boolean): Part {
  if (now.is === 'text') return [2, now.value, half ? 0.5 : 0];
  return [now.is === 'number' ? 0 : 1, now.value + (half ? 0.5 : 0)];
}

function moveLast(parts: Part[]): boolean {
  const last = parts.at(-1);
  if (!last) return false;
  parts[parts.length - 1] = last[0] === 2 ? [2, last[1], 0.5] : [last[0], last[1] + 0.5];
  return true;
}

function compareParts(a: Part, b: Part): number {
  if (a[0] !== b[0]) return a[0] - b[0];
  if (a[0] === 2 && b[0] === 2) return compareText(a[1], b[1]) || a[2] - b[2];
  return Number(a[1]) - Number(b[1]);
}
