import { describe, expect, test } from 'vitest';
import { PROBLEM_CODES, type Problem } from '#domain/contract/problems';
import { OfflineError, ProblemError } from '../../../client/api/errors.ts';
import { problemSentence, sentenceOf } from '../../../client/i18n/problem-sentence.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

const problem = (code: Problem['code'], params: Problem['params'] = {}): Problem => ({
  type: `urn:${code}`,
  title: '',
  status: 400,
  detail: '',
  code,
  params,
});

describe.each(LANGUAGES)('in %s', async (lang) => {
  const t = await wordsOf(lang);
  test.each(PROBLEM_CODES)('%s reads whole without any value', (code) => {
    const sentence = sentenceOf(t, lang, problem(code));
    expect(sentence).toMatch(lang === 'en' ? /^[^{}]{20,}\.$/ : /^[^{}]{10,}。$/);
    expect(sentence).not.toContain('problems.');
    expect(sentence).not.toMatch(/undefined|\s\s/);
  });
  test('names the file, the limit and what was found', () => {
    const params = { file: '梁 1.jpg', limit: 100 };
    expect(sentenceOf(t, lang, problem('file-too-large', params))).toMatch(/梁 1\.jpg.*100/);
    expect(sentenceOf(t, lang, problem('photo-not-an-image', { file: 'a', found: 'PDF' }))).toContain('PDF');
  });
  test('says why a table cannot be read', () => {
    const params = { reason: 'open-quote', line: 12 };
    expect(sentenceOf(t, lang, problem('schedule-unreadable', params))).toContain('12');
    expect(sentenceOf(t, lang, problem('schedule-unreadable', { reason: 'toString' }))).not.toBe('');
  });
});

test.each([
  ['en', 'send it again. It is about: name and least stage.'],
  ['ja', '送ってください。該当する項目：名前、必要な段階。'],
] as const)('a refused form names its fields in %s, not in the words of the API', async (lang, end) => {
  const errors = [
    { path: 'body.name', message: 'Too small: expected string to have >=1 characters' },
    { path: 'body.hides.0.least', message: 'Invalid option' },
    { path: 'body.hides.3.least', message: 'Invalid option' },
    { path: 'body', message: 'Unrecognized key: "constructor"' },
  ];
  const sentence = sentenceOf(await wordsOf(lang), lang, { ...problem('invalid-request'), errors });
  expect(sentence.endsWith(end), sentence).toBe(true);
  expect(sentence).not.toMatch(/expected|Invalid|body|Unrecognized/);
});

test.each([
  ['body.zone', 'It is about: time zone.'],
  ['body.zone.top', 'It is about: zone: a line or a height of it.'],
] as const)('%s of a house is its time zone, parts of a zone are those of a covering', async (path, end) => {
  const errors = [{ path, message: 'Invalid input' }];
  const sentence = sentenceOf(await wordsOf('en'), 'en', { ...problem('invalid-request'), errors });
  expect(sentence.endsWith(end), sentence).toBe(true);
});

test('only a form says that what was typed is still there', async () => {
  const [t, error] = [await wordsOf('en'), new OfflineError('x')];
  expect(problemSentence(t, 'en', error)).not.toContain('typed');
  expect(problemSentence(t, 'en', error, true)).toContain('what you typed is still here');
});

test('a stage is named in the language of the reader', async () => {
  const t = await wordsOf('ja');
  const sentence = sentenceOf(t, 'ja', problem('stage-outside-track', { mark: 'い三', stage: 'lath-on' }));
  expect(sentence).toMatch(/い三.*「小舞掻き」/);
});

test('what is not a problem document still becomes a sentence', async () => {
  const t = await wordsOf('en');
  expect(problemSentence(t, 'en', new OfflineError('x'))).toMatch(/did not answer/);
  expect(problemSentence(t, 'en', new TypeError('x'))).toMatch(/went wrong/);
  expect(problemSentence(t, 'en', new ProblemError(problem('last-owner')))).toMatch(/keeper/);
});
