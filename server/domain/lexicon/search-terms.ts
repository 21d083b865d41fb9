import { foldTerm } from './fold-term.ts';
import { spellings, type Kind } from './kind.ts';
import { soundOf, unvoiced } from './sound.ts';
import { spellingDistance } from './spelling-distance.ts';

/** What of a term is searched. */
export type Searched = Pick<Kind, 'kanji' | 'kana' | 'romaji' | 'en' | 'also'>;

/** 'exact': spelled so, or sounding so and nothing else does. 'near': to be offered, never to be taken. */
export interface Hit<T> {
  readonly term: T;
  readonly match: 'exact' | 'near';
}

interface Entry<T> {
  readonly term: T;
  /** All spellings, folded, without what parts words. */
  readonly plain: readonly string[];
  /** Those with kanji as the kanji alone: 通し柱 and 通柱, 筋違い and 筋違 are written either way. */
  readonly bare: readonly string[];
  /** Words of the glosses. */
  readonly words: readonly (readonly string[])[];
  readonly sounds: readonly string[];
  readonly unvoiced: readonly string[];
}

export type TermIndex<T> = readonly Entry<T>[];

const JAPANESE = /[\p{Script=Han}\p{Script=Hiragana}]/u;
const KANJI = /\p{Script=Han}/u;

export function indexTerms<T extends Searched>(terms: readonly T[]): TermIndex<T> {
  return terms.map((term) => {
    const names = spellings(term).map(foldTerm);
    const spoken = [term.kana, term.romaji, ...term.also].map(foldTerm).filter((name) => !KANJI.test(name));
    const sounds = [...new Set(spoken.map(soundOf))].filter((sound) => sound !== '');
    return {
      term,
      plain: [...new Set(names.map(joined))],
      bare: names.map(kanjiAlone).filter((name) => name !== ''),
      words: names.filter((name) => !JAPANESE.test(name)).map((name) => name.split(/[\s-]+/)),
      sounds,
      unvoiced: sounds.map(unvoiced),
    };
  });
}

const joined = (folded: string) => folded.replace(/[\s\-‐‑–・'’]+/gu, '');

/** Empty where there are fewer than two: 柱 alone is not えびす柱. */
function kanjiAlone(folded: string): string {
  const kanji = joined(folded).replace(/\p{Script=Hiragana}+/gu, '');
  return KANJI.test(kanji) && kanji.length > 1 ? kanji : '';
}

/** Best first. Nothing is found for an empty text. */
export function searchTerms<T>(index: TermIndex<T>, text: string): Hit<T>[] {
  const wanted = wantedFor(text);
  if (wanted.plain === '') return [];
  const ranked = index.flatMap((entry) => {
    const rank = rankOf(entry, wanted);
    return rank === null ? [] : [{ term: entry.term, rank }];
  });
  ranked.sort((a, b) => a.rank - b.rank);
  const spelled = ranked.filter(({ rank }) => rank === SPELLED).length;
  const sounding = ranked.filter(({ rank }) => rank === SOUNDING).length;
  const isSure = (rank: number) =>
    (rank === SPELLED && spelled === 1) || (rank === SOUNDING && spelled === 0 && sounding === 1);
  return ranked.map(({ term, rank }) => ({ term, match: isSure(rank) ? 'exact' : 'near' }));
}

interface Wanted {
  readonly plain: string;
  readonly bare: string;
  readonly words: readonly string[];
  readonly sound: string;
  readonly unvoiced: string;
}

function wantedFor(text: string): Wanted {
  const folded = foldTerm(text);
  const sound = KANJI.test(folded) ? '' : soundOf(folded);
  return {
    plain: joined(folded),
    bare: kanjiAlone(folded),
    words: JAPANESE.test(folded) ? [] : folded.split(/[\s-]+/).filter((word) => word !== ''),
    sound,
    unvoiced: unvoiced(sound),
  };
}

const SPELLED = 0;
const SOUNDING = 1;
const NEVER = 99;

/** Lower is better; what is longer than was typed stands behind what is nearer in length. */
function rankOf(entry: Entry<unknown>, wanted: Wanted): number | null {
  const { plain, bare, sound } = wanted;
  if (entry.plain.includes(plain)) return SPELLED;
  if (sound !== '' && entry.sounds.includes(sound)) return SOUNDING;
  if (bare !== '' && entry.bare.includes(bare)) return 1.5;
  if (sound !== '' && entry.unvoiced.includes(wanted.unvoiced)) return 2;
  const rank = Math.min(
    begins(entry.plain, plain, 3),
    begins(entry.sounds, sound, 3),
    begins(entry.unvoiced, wanted.unvoiced, 3.4),
    mistyped(entry.sounds, sound),
    mistyped(entry.plain, plain),
    mistyped(entry.unvoiced, wanted.unvoiced) + 0.2,
    worded(entry.words, wanted.words),
    holds(entry.plain, plain),
    holds(entry.unvoiced, wanted.unvoiced) + 0.3,
    entry.bare.some((name) => bare.includes(name)) ? 4.9 : NEVER,
  );
  return rank >= NEVER ? null : rank;
}

/** Up to a third more for all that follows. */
const extra = (name: string, part: string) => Math.min((name.length - part.length) / 60, 0.33);

function begins(names: readonly string[], part: string, rank: number): number {
  const fit = names.filter((name) => part !== '' && name.startsWith(part));
  return fit.length === 0 ? NEVER : rank + Math.min(...fit.map((name) => extra(name, part)));
}

/** Kanji are looked for anywhere from one sign on, letters from three on. */
function holds(names: readonly string[], part: string): number {
  if (part.length < (JAPANESE.test(part) ? 1 : 3)) return NEVER;
  const fit = names.filter((name) => name.includes(part));
  return fit.length === 0 ? NEVER : 4.5 + Math.min(...fit.map((name) => extra(name, part)));
}

/** One letter may be wrong from three on, two from six on; what is still being typed may have one. */
function mistyped(names: readonly string[], typed: string): number {
  if (typed.length < 3 || JAPANESE.test(typed)) return NEVER;
  const most = typed.length < 6 ? 1 : 2;
  let best = NEVER;
  for (const name of names) {
    const distance = spellingDistance(typed, name, most);
    if (distance <= most) best = Math.min(best, 3.6 + distance * 0.5);
    else if (typed.length >= 5 && name.length > typed.length + 1 && isBegunMistyped(name, typed))
      best = Math.min(best, 5.2 + extra(name, typed));
  }
  return best;
}

function isBegunMistyped(name: string, typed: string): boolean {
  return [-1, 0, 1].some((by) => spellingDistance(typed, name.slice(0, typed.length + by), 1) <= 1);
}

/** Every typed word begins, but for a letter, a word of one spelling. */
function worded(spelled: readonly (readonly string[])[], typed: readonly string[]): number {
  if (typed.length === 0 || (typed.length === 1 && (typed[0]?.length ?? 0) < 3)) return NEVER;
  let best = NEVER;
  for (const words of spelled) {
    const costs = typed.map((part) => Math.min(...words.map((word) => wordCost(word, part))));
    const unsaid = Math.abs(words.length - typed.length) * 0.1;
    best = Math.min(best, 3.5 + costs.reduce((sum, cost) => sum + cost, 0) + unsaid);
  }
  return best < 5.5 ? best : NEVER;
}

function wordCost(word: string, part: string): number {
  if (word === part) return 0;
  if (word.startsWith(part)) return 0.2;
  if (part.startsWith(word) && /^e?s$/.test(part.slice(word.length))) return 0.1;
  const most = part.length < 3 ? 0 : part.length < 6 ? 1 : 2;
  const distance = spellingDistance(part, word, most);
  return distance <= most ? distance * 0.5 : NEVER;
}
