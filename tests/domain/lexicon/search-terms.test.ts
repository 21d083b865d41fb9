import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { KINDS, type Kind } from '#domain/lexicon/kinds';
import { indexTerms, searchTerms } from '#domain/lexicon/search-terms';
import { soundOf } from '#domain/lexicon/sound';
import { spellingDistance } from '#domain/lexicon/spelling-distance';
import { findKind } from '#domain/lexicon/track-of-kind';

const INDEX = indexTerms(KINDS);
const found = (text: string) => searchTerms(INDEX, text).map(({ term }) => term.id);

/** As people type them; none of these stands so in the lexicon. */
const VARIANTS: readonly (readonly [typed: string, id: string])[] = [
  // Long vowels.
  ['oobiki', 'obiki'],
  ['oubiki', 'obiki'],
  ['ohbiki', 'obiki'],
  ['toushi bashira', 'toshibashira'],
  ['tooshibashira', 'toshibashira'],
  ['houzue', 'hozue'],
  ['dousashi', 'dosashi'],
  ['tenjou-nuki', 'tenjonuki'],
  ['gasshou', 'gassho'],
  ['nijuubari', 'nijubari'],
  ['kouryou', 'koryo'],
  ['kyuusui-kan', 'kyusuikan'],
  // Voiced compounds.
  ['kudahashira', 'kudabashira'],
  ['daikoku-hashira', 'daikokubashira'],
  ['ma-hashira', 'mabashira'],
  ['koyatsuka', 'koyazuka'],
  ['yuka-tsuka', 'yukazuka'],
  ['mune-tsuka', 'munazuka'],
  ['shintsuka', 'shinzuka'],
  ['ushihari', 'ushibari'],
  ['noborihari', 'noboribari'],
  ['keshou taruki', 'keshodaruki'],
  // Kunrei and keyboard spellings.
  ['tosibasira', 'toshibashira'],
  ['hasira', 'hashira'],
  ['zinuki', 'jinuki'],
  ['kosinuki', 'koshinuki'],
  ['syatisen', 'shachisen'],
  ['tigiri', 'chigiri'],
  ['huredome', 'furedome'],
  ['asigatame', 'ashigatame'],
  ['kiduri', 'kizuri'],
  ['koyaduka', 'koyazuka'],
  ['magsa', 'magusa'],
  // Dropped, doubled, swapped and wrong letters.
  ['komissen', 'komisen'],
  ['gasho', 'gassho'],
  ['munnagi', 'munagi'],
  ['tarukki', 'taruki'],
  ['tarki', 'taruki'],
  ['sujkai', 'sujikai'],
  ['suijkai', 'sujikai'],
  ['sumgi', 'sumigi'],
  ['negarammi', 'negarami'],
  ['kusabbi', 'kusabi'],
  ['hirokmai', 'hirokomai'],
  ['mawatasidake', 'mawatashidake'],
  ['dodaii', 'dodai'],
  ['nobuti', 'nobuchi'],
  ['sumibasira', 'sumibashira'],
  ['sinnduka', 'shinzuka'],
  // Kana and width.
  ['ﾇｷ', 'nuki'],
  ['ＴＡＲＵＫＩ', 'taruki'],
  ['すぢかい', 'sujikai'],
  ['コマイ', 'komai'],
  ['とうしばしら', 'toshibashira'],
  ['たるぎ', 'taruki'],
  // Kanji with and without endings.
  ['込栓柱', 'komisen'],
  ['吊り束', 'tsurizuka'],
  ['木摺り', 'kizuri'],
  ['根絡', 'negarami'],
  ['大引き材', 'obiki'],
  ['頭繋', 'atamatsunagi'],
  ['胴差し', 'dosashi'],
  // English with typos.
  ['raftr', 'taruki'],
  ['rafters', 'taruki'],
  ['perlin', 'moya'],
  ['collumn', 'hashira'],
  ['wall-plate', 'keta'],
  ['kingpost', 'shinzuka'],
  ['knee bracing', 'hozue'],
  ['joists', 'neda'],
  ['tie-rial', 'nuki'],
  ['wedges', 'kusabi'],
  ['insulaton', 'dannetsuzai'],
  ['vapor barier', 'boshitsushito'],
  ['anchor blot', 'ankaboruto'],
  ['glasswool', 'gurasuuru'],
];

describe('the search for a term', () => {
  it(`finds the right kind first for at least 95 % of ${VARIANTS.length} variants`, () => {
    const missed = VARIANTS.filter(([typed, id]) => found(typed)[0] !== id);
    expect(VARIANTS.length).toBeGreaterThanOrEqual(60);
    const told = missed.map(([typed, id]) => `${typed}: ${id}, not ${found(typed).slice(0, 4).join(' ')}`);
    expect(missed.length / VARIANTS.length, told.join('\n')).toBeLessThanOrEqual(0.05);
  });

  it('finds each kind by each of its own spellings, and is sure', () => {
    for (const kind of KINDS)
      for (const name of [kind.kanji, kind.kana, kind.romaji, kind.en, ...kind.also])
        expect([name, searchTerms(INDEX, name)[0]]).toEqual([name, { term: kind, match: 'exact' }]);
  });

  it.each(['xylophone', 'qqqq', '?', '', '   ', '。', '🙂'])(
    'finds nothing for %j that it is sure of',
    (text) => expect(searchTerms(INDEX, text).filter(({ match }) => match === 'exact')).toEqual([]),
  );

  it('is never sure of what is only near', () => {
    for (const text of ['hashra', 'kudahashira', 'raftr', 'bari', '束', 'tie'])
      for (const { match } of searchTerms(INDEX, text)) expect(match).toBe('near');
  });

  it('is not sure where two kinds sound the same', () => {
    const twin = { ...(findKind('貫') as Kind), id: 'twin', kanji: '抜', en: 'draw', also: [] };
    const hits = searchTerms(indexTerms([...KINDS, twin]), 'ﾇﾂｷ'.replace('ﾂ', ''));
    expect(hits.slice(0, 2).map(({ match }) => match)).toEqual(['near', 'near']);
  });

  it('offers what is being typed after two letters', () => {
    expect(found('ta').slice(0, 6)).toContain('taruki');
    expect(found('柱').length).toBeGreaterThan(5);
    expect(found('bashira').slice(0, 8)).toContain('kudabashira');
  });

  it('is fast enough for every key: 300 terms in a few ms', () => {
    const many = indexTerms([...KINDS, ...KINDS]);
    const start = performance.now();
    for (const [typed] of VARIANTS) searchTerms(many, typed);
    expect((performance.now() - start) / VARIANTS.length).toBeLessThan(50);
  });
});

const letter = fc.constantFrom(...'abcdefghijklmnopqrstuvwxyz');
const damage = fc.record({
  kind: fc.constantFrom(...KINDS.filter(({ romaji }) => romaji.length >= 5)),
  how: fc.constantFrom('drop', 'change', 'add', 'swap'),
  at: fc.nat(100),
  letter,
});

function damaged(word: string, how: string, at: number, other: string): string {
  const i = at % word.length;
  const [before, after] = [word.slice(0, i), word.slice(i + 1)];
  if (how === 'drop') return before + after;
  if (how === 'add') return before + other + word.slice(i);
  if (how === 'change') return before + other + after;
  return before + after.slice(0, 1) + word.charAt(i) + after.slice(1);
}

test('one damaged letter of the romaji keeps the kind within the first five, and never makes it sure of another', () => {
  fc.assert(
    fc.property(damage, ({ kind, how, at, letter: other }) => {
      const typed = damaged(kind.id, how, at, other);
      const hits = searchTerms(INDEX, typed);
      expect(
        hits.slice(0, 5).map(({ term }) => term.id),
        typed,
      ).toContain(kind.id);
      const [first] = hits;
      if (first?.match === 'exact' && first.term.id !== kind.id) {
        const own = [first.term.kana, first.term.romaji, first.term.en, ...first.term.also];
        expect(own.map((name) => soundOf(name.toLowerCase()))).toContain(soundOf(typed));
      }
    }),
    { numRuns: 500 },
  );
});

/** Optimal string alignment straight from its definition, without a table. */
function oracle(a: string, b: string): number {
  if (a === '' || b === '') return a.length + b.length;
  const [x, y] = [a.slice(0, -1), b.slice(0, -1)];
  const ways = [oracle(x, b) + 1, oracle(a, y) + 1, oracle(x, y) + (a.at(-1) === b.at(-1) ? 0 : 1)];
  if (a.length > 1 && b.length > 1 && a.at(-1) === b.at(-2) && a.at(-2) === b.at(-1))
    ways.push(oracle(a.slice(0, -2), b.slice(0, -2)) + 1);
  return Math.min(...ways);
}

test('the distance of spellings is that of its definition, up to the most that is asked', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 5 });
  fc.assert(
    fc.property(word, word, fc.nat(3), (a, b, most) => {
      expect(spellingDistance(a, b, most)).toBe(Math.min(oracle(a, b), most + 1));
    }),
  );
});
