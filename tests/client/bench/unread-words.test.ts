import { describe, expect, test } from 'vitest';
import { COMPLAINTS } from '#domain/contract/complaints';
import { RivalShape } from '#domain/contract/shapes';
import { complaintSentence, rivalSentence } from '../../../client/screens/bench/unread-words.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

const FIELDS = RivalShape.shape.field.options;

describe.each(LANGUAGES)('in %s', async (lang) => {
  const t = await wordsOf(lang);
  const whole = lang === 'en' ? /^[A-Z][^{}]{15,}[.:]$/ : /^[^{}]{6,}。$/;

  test.each(COMPLAINTS)('%s has a sentence of its own', (code) => {
    const sentence = complaintSentence(t, code);
    expect(sentence).toMatch(whole);
    expect(sentence).not.toContain(code);
    expect(sentence).not.toMatch(/undefined|unread\./);
  });

  test('no two complaints are the same sentence', () => {
    const sentences = COMPLAINTS.map((code) => complaintSentence(t, code));
    expect(new Set(sentences).size).toBe(COMPLAINTS.length);
  });

  test.each(['', 'toString', 'shutter-stuck', 'toString-cut', 'make-', 'constructor-invalid'])(
    'a code that is not known, %j, is said in general',
    (code) => {
      const sentence = complaintSentence(t, code);
      expect(sentence).toMatch(whole);
      expect(sentence).toContain(code);
    },
  );

  test.each(FIELDS)('two values of %s are both said', (field) => {
    const sentence = rivalSentence(t, { field, first: '61', second: '-90' });
    expect(sentence).toMatch(whole);
    expect(sentence).not.toMatch(/undefined|unread\./);
    if (field !== 'offsetMinutes') expect(sentence).toMatch(/61.*[-\u2011]90/);
  });

  test('a difference of clocks is in hours and minutes, an instant says UTC', () => {
    const offset = rivalSentence(t, { field: 'offsetMinutes', first: '545', second: '-210' });
    expect(offset).toMatch(/\+09:05.*−03:30/);
    const at = { first: '2026-04-01T00:30:00.000Z', second: '2026-04-01T01:30:00.000Z' };
    expect(rivalSentence(t, { field: 'gpsTime', ...at })).toMatch(
      /2026\u201104\u201101\u00a000:30:00\u00a0UTC/,
    );
  });
});
