import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseKanjiNumber } from '#domain/frame/kanji-number';
import { compareMarks, IROHA } from '#domain/frame/mark-order';

const sorted = (marks: readonly string[]) => [...marks].reverse().sort(compareMarks);
const inOrder = (...marks: string[]) => expect(sorted(marks)).toEqual(marks);

describe('compareMarks', () => {
  it('counts digits by value', () => inOrder('N-2', 'N-10', 'N-100'));
  it('does not mind capitals and separators before numbers', () => inOrder('a1', 'A-2', 'a 3', 'A4'));
  it('puts numbers before lines before words', () => inOrder('3', '三', 'い', 'ろ', 'post'));

  // Order of the 47 kana: W3C css-counter-styles, hiragana-iroha; positions い1 と7 を12 か14 す47.
  it('follows the iroha', () => {
    expect([...IROHA].length).toBe(48);
    for (const [kana, position] of [
      ['い', 1],
      ['と', 7],
      ['を', 12],
      ['か', 14],
      ['そ', 18],
      ['な', 21],
      ['う', 24],
      ['ゐ', 25],
      ['く', 28],
      ['こ', 33],
      ['て', 35],
      ['き', 38],
      ['し', 42],
      ['す', 47],
    ] as const)
      expect([...IROHA].indexOf(kana) + 1).toBe(position);
    inOrder(...IROHA);
    inOrder('い三', 'ろ二', 'ろ三', 'と一', 'す一', 'ん一');
  });
  it('reads katakana lines like hiragana ones', () => inOrder('イ二', 'ロ一', 'は一', 'ニ一'));

  // 廿四 = 24: marks of the Sakai gunsmith storehouse (city.sakai.lg.jp); the rest common practice.
  it('counts kanji numerals by value', () => {
    inOrder('い一', 'い二', 'い九', 'い十', 'い十一', 'い廿', 'い廿四', 'い三十', 'い卅二', 'い百二');
    inOrder('は2', 'は三', 'は10', 'は十一');
  });

  // kenchikuyogo.com: off the line, "は又の2"; kenchikushiblog: 又四 lies between 四 and 五, 又 may stand behind.
  it('puts 又 half a bay on', () => {
    inOrder('い三', 'い又三', 'い四', 'い四又', 'い五');
    inOrder('四', '又四', '五');
    inOrder('は3', 'は又の2', 'に1');
    inOrder('い三', '又い三', 'ろ三');
    inOrder('りノ七', 'りノ又七', 'りノ八');
  });
  it('takes the spoken の for nothing, the line の for a line', () => {
    inOrder('はの2', 'は3', 'はの4');
    inOrder('ゐ2', 'の1', 'のの2', 'お1');
  });
  it('keeps words of kana together', () => inOrder('いと1', 'ぬき2', 'ぬき10'));

  const mark = fc
    .array(
      fc.constantFrom('い', 'ろ', 'の', '又', '一', '十', '廿', '3', '10', '-', ' ', 'A', 'a', 'ぬき', '通'),
      {
        maxLength: 6,
      },
    )
    .map((pieces) => pieces.join(''));

  it('is a total order', () => {
    fc.assert(
      fc.property(mark, mark, mark, (a, b, c) => {
        expect(Math.sign(compareMarks(a, b)) + Math.sign(compareMarks(b, a))).toBe(0);
        expect(compareMarks(a, b) === 0).toBe(a === b);
        if (compareMarks(a, b) <= 0 && compareMarks(b, c) <= 0)
          expect(compareMarks(a, c)).toBeLessThanOrEqual(0);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('parseKanjiNumber', () => {
  const write = (value: number): string =>
    [
      [1000, '千'],
      [100, '百'],
      [10, '十'],
    ]
      .reduce<[string, number]>(
        ([text, rest], [unit, sign]) => {
          const n = Math.floor(rest / Number(unit));
          const digit = n > 1 ? '〇一二三四五六七八九'.charAt(n) : '';
          return [n === 0 ? text : text + digit + String(sign), rest % Number(unit)];
        },
        ['', value],
      )
      .map((part) =>
        typeof part === 'number' ? (part === 0 ? '' : '〇一二三四五六七八九'.charAt(part)) : part,
      )
      .join('');

  it('reads every number up to 9999 back', () => {
    for (let value = 1; value <= 9999; value += 1) expect(parseKanjiNumber(write(value))).toBe(value);
  });
  it.each([
    ['〇', 0],
    ['一〇', 10],
    ['二三', 23],
    ['廿', 20],
    ['廿四', 24],
    ['卅一', 31],
    ['百廿一', 121],
    ['壱弐', 12],
    ['一千二百', 1200],
  ])('%s is %i', (text, value) => expect(parseKanjiNumber(text)).toBe(value));
  it.each(['', '十十', '十百', '二廿', '十一二', '三四十', 'A'])('%s is no number', (text) =>
    expect(parseKanjiNumber(text)).toBeNull(),
  );
});
