import { describe, expect, test } from 'vitest';
import { oneStop } from '../../../client/i18n/one-stop.ts';
import { wordsOf } from '../words.ts';

const ended = (template: string, values: Record<string, unknown>) => {
  const text = template.replaceAll(/\{\{(\w+)\}\}/gu, (_, name: string) => String(values[name]));
  return oneStop.process(text, '', values, undefined);
};

describe('of two stops in a row one stays', () => {
  test.each([
    ['{{mark}}。', { mark: 'に三.' }, 'に三。'],
    ['理由：{{why}}。次', { why: '濡れていた。' }, '理由：濡れていた。次'],
    ['取り消した（{{why}}）。', { why: '濡れていた。' }, '取り消した（濡れていた）。'],
    ['{{said}}。次', { said: '佐藤が疑義「分からない。」' }, '佐藤が疑義「分からない」。次'],
    ['疑義「{{why}}」。次', { why: '分からない。' }, '疑義「分からない」。次'],
    ['{{said}}。', { said: '疑義「どこ？」' }, '疑義「どこ？」。'],
    ['Took back “{{name}}”.', { name: 'N. wall.' }, 'Took back “N. wall”.'],
    ['By {{who}}. Again {{who}}.', { who: 'Ito jr.' }, 'By Ito jr. Again Ito jr.'],
    ['{{why}}。', { why: 'どこ？' }, 'どこ？'],
    ['Why: {{why}}.', { why: 'where?' }, 'Why: where?'],
  ])('%s', (template, values, said) => expect(ended(template, values)).toBe(said));

  test.each([
    ['“{{name}}” closed.', { name: 'N. wall.' }, '“N. wall.” closed.'],
    ['{{file}}.jpg', { file: 'a.' }, 'a..jpg'],
    ['Note: {{note}}.', { note: 'to be seen ...' }, 'Note: to be seen ....'],
    ['{{sentence}} Reason: {{reason}}', { sentence: 'Done.', reason: 'rain.' }, 'Done. Reason: rain.'],
  ])('%s stays', (template, values, said) => expect(ended(template, values)).toBe(said));

  test('as the catalogs fill in what people said', async () => {
    const ja = await wordsOf('ja');
    expect(ja('ledger.say.findings.accepted', { count: 1, what: 'に三.' })).toMatch(/：に三。$/u);
    const en = await wordsOf('en');
    expect(en('problems.code.not-reviewed', { replace: { marks: 'い三.' } })).toMatch(/い三\.$/u);
  });
});
