import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseKanjiNumber } from '#domain/frame/kanji-number';
import { nextMark } from '../../../client/screens/bench/next-mark.ts';

describe('the mark that comes next', () => {
  // Common practice of counting grid marks; the ways of writing are those of parseKanjiNumber.
  test.each([
    ['い一', 'い二'],
    ['い九', 'い十'],
    ['い十', 'い十一'],
    ['い十九', 'い二十'],
    ['い九十九', 'い百'],
    ['い百九', 'い百十'],
    ['い二三', 'い二四'],
    ['い一九', 'い二〇'],
    ['い九九', 'い一〇〇'],
    ['い廿三', 'い廿四'],
    ['い廿九', 'い卅'],
    ['い卅九', 'い四十'],
    ['い壱', 'い弐'],
    ['い弐', 'い参'],
    ['い参', 'い四'],
    ['い又四', 'い又五'],
    ['は三 貫', 'は四 貫'],
    ['N1-08', 'N1-09'],
    ['N1-09', 'N1-10'],
    ['P9', 'P10'],
    ['post 099 east', 'post 100 east'],
    ['い3', 'い4'],
  ])('%s → %s', (mark, next) => expect(nextMark(mark)).toBe(next));

  test.each(['ridge', '棟木', '', '十十', 'い九千九百九十九'])('nothing to count on in "%s"', (mark) =>
    expect(nextMark(mark)).toBeNull(),
  );

  test('is one higher, in kanji with units, for every number below 9999', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9997 }), (value) => {
        let mark = '〇';
        if (value > 0) mark = kanjiWithUnits(value);
        const next = nextMark(`ろ${mark}`);
        expect(parseKanjiNumber((next ?? '').slice(1))).toBe(value + 1);
      }),
    );
  });
});

/** Written here once more and otherwise: place by place from the right. */
function kanjiWithUnits(value: number): string {
  const digits = [...String(value)].reverse().map(Number);
  return digits
    .map((d, place) => {
      if (d === 0) return '';
      const unit = ['', '十', '百', '千'][place] ?? '';
      return (d === 1 && place > 0 ? '' : ('〇一二三四五六七八九'[d] ?? '')) + unit;
    })
    .reverse()
    .join('');
}
