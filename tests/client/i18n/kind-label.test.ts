import { expect, test } from 'vitest';
import { kindLabel } from '../../../client/i18n/kind-label.ts';

test.each([
  ['nuki', 'en', '貫 nuki, tie rail'],
  ['Tie Rail', 'ja', '貫（ぬき）'],
  ['まぐさ', 'ja', 'まぐさ'],
  ['spirit level', 'ja', 'spirit level'],
  ['', 'en', ''],
] as const)('%s in %s: %s', (kind, lang, expected) => {
  expect(kindLabel(kind, lang)).toBe(expected);
});
