import { expect, test } from 'vitest';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import { firstOfKind, kindLabel } from '../../../client/i18n/kind-label.ts';

test.each([
  ['nuki', 'en', '貫 nuki, tie rail'],
  ['Tie Rail', 'ja', '貫（ぬき）'],
  ['まぐさ', 'ja', 'まぐさ'],
  ['spirit level', 'ja', 'spirit level'],
  ['', 'en', ''],
] as const)('%s in %s: %s', (kind, lang, expected) => {
  expect(kindLabel(kind, lang, BUILT_IN)).toBe(expected);
});

test('the reading stands with the first of each kind, under whatever name the kind is written', () => {
  const things = ['貫', '柱', 'nuki', '', '柱', '謎', '謎'].map((kind, place) => ({ kind, place }));
  expect([...firstOfKind(things, BUILT_IN)].map(({ place }) => place)).toEqual([0, 1, 3, 5]);
});
