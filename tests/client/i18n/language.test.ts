import { expect, test } from 'vitest';
import { initialLanguage } from '../../../client/i18n/language.ts';

test.each([
  ['ja', ['en-GB'], 'ja'],
  ['de', ['de-DE', 'ja-JP', 'en'], 'ja'],
  [null, ['en-US', 'ja'], 'en'],
  [null, ['fr'], 'en'],
  [null, [], 'en'],
] as const)('stored %s, wished %s: %s', (stored, wished, expected) => {
  expect(initialLanguage(stored, wished)).toBe(expected);
});
