import { expect, test } from 'vitest';
import { HOUSE_PARTS, partOf } from '../../../client/shell/house-parts.ts';

test.each([
  ['', 'journal'],
  ['days/2026-04-01', 'journal'],
  ['members/%E3%81%84', 'members'],
  ['schedule', 'members'],
  ['photos/1', 'photos'],
  ['nowhere', null],
])('%j belongs to %s', (below, expected) => expect(partOf(below)).toBe(expected));

test('every part leads to itself', () => {
  for (const { path, word } of HOUSE_PARTS) expect(partOf(path)).toBe(word);
});
