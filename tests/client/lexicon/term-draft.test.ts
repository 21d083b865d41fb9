import { expect, test } from 'vitest';
import { KINDS } from '#domain/lexicon/kinds';
import { TermFacts } from '#domain/contract/terms';
import {
  EMPTY_TERM,
  readAlso,
  readSection,
  readTermDraft,
  termDraft,
} from '../../../client/screens/lexicon/term-draft.ts';

test.each([
  ['15×105', [15, 105]],
  ['１５ｘ１０５', [15, 105]],
  ['15 x 105', [15, 105]],
  ['15mm × 105 mm', [15, 105]],
  ['', null],
  ['0×105', undefined],
  ['15', undefined],
  ['15×105×3', undefined],
  ['15×2001', undefined],
  ['thick', undefined],
])('the section %s is %j', (text, section) => expect(readSection(text)).toEqual(section));

test('further names are parted by whatever comma is at hand, each once', () =>
  expect(readAlso('通し貫、通貫, rail ,rail，')).toEqual(['通し貫', '通貫', 'rail']));

test('a kind without a name, or with half a section, is not sent', () => {
  expect(readTermDraft(EMPTY_TERM)).toEqual({ wrong: { name: true, section: false } });
  expect(readTermDraft({ ...EMPTY_TERM, en: 'grid', section: '15' })).toEqual({
    wrong: { name: false, section: true },
  });
});

test('every kind of the program comes through the form as it was, and fits the contract', () => {
  for (const kind of KINDS) {
    const read = readTermDraft(termDraft(kind, ''));
    const { id: _, ...facts } = kind;
    expect(read).toEqual({ facts: { ...facts, does: '' } });
    expect(TermFacts.parse('facts' in read ? read.facts : null)).toMatchObject(facts);
  }
});
