import { expect, test } from 'vitest';
import { KINDS } from '#domain/lexicon/kinds';
import { rubyParts } from '../../../client/parts/ruby-parts.ts';

test.each([
  ['貫', 'ぬき', '貫(ぬき)'],
  ['通し柱', 'とおしばしら', '通(とお)し柱(ばしら)'],
  ['間渡し竹', 'まわたしだけ', '間渡(まわた)し竹(だけ)'],
  ['筋かい', 'すじかい', '筋(すじ)かい'],
  ['まぐさ', 'まぐさ', 'まぐさ'],
])('%s is read %s', (word, reading, expected) => {
  const parts = rubyParts(word, reading);
  expect(parts.map(({ base, reading: over }) => (over === null ? base : `${base}(${over})`)).join('')).toBe(
    expected,
  );
});

test('nothing of a word or its reading is lost, in the whole lexicon', () => {
  for (const { kanji, kana } of KINDS) {
    const parts = rubyParts(kanji, kana);
    expect(parts.map(({ base }) => base).join('')).toBe(kanji);
    expect(parts.map(({ base, reading }) => reading ?? base).join('')).toBe(kana);
  }
});

test('a reading that does not fit stands over the whole word', () => {
  expect(rubyParts('通し柱', 'x')).toEqual([{ base: '通し柱', reading: 'x' }]);
});
