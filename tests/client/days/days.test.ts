import { WHOLE_LINE } from '../../support/whole-line.ts';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import type { BriefDayView, MissingLineView } from '#domain/contract/journal-views';
import type { HouseView } from '#domain/contract/views';
import type { Mark } from '#domain/frame/mark';
import { countWords, dayLine, marksWords, peopleWords } from '../../../client/screens/days/day-words.ts';
import { firstSteps } from '../../../client/screens/days/first-steps.ts';
import { groupMissing } from '../../../client/screens/days/group-missing.ts';
import { wordsOf } from '../words.ts';
import { dayAfter, isDay } from '../../../client/screens/days/day-step.ts';

// The reference is Temporal (TC39 proposal), as implemented by temporal-polyfill.
test('days follow each other over months, years and leap days', () => {
  for (const start of ['2026-12-31', '2028-02-28', '2026-03-29', '2000-02-29'])
    for (const days of [-366, -1, 0, 1, 31])
      expect(dayAfter(start, days)).toBe(Temporal.PlainDate.from(start).add({ days }).toString());
});

test.each([
  ['2026-04-01', true],
  ['2028-02-29', true],
  ['2026-02-29', false],
  ['2026-4-1', false],
  ['2026-13-01', false],
  ['today', false],
])('%s is a day: %s', (text, expected) => expect(isDay(text)).toBe(expected));

const missing = (mark: string, more: Partial<MissingLineView> = {}): MissingLineView => ({
  mark: mark as Mark,
  kind: '貫',
  place: '北の壁',
  least: 'pegged',
  state: 'gap',
  ...WHOLE_LINE,
  nearestMiss: { reasons: ['no-photo'], tag: null },
  ...more,
});

test('what is missing is put together by place, then by what is needed and why nothing counts', () => {
  const early = { reasons: ['before-stage', 'undated'] as const, tag: null };
  const groups = groupMissing([
    missing('い一'),
    missing('い二', { nearestMiss: { ...early, reasons: [...early.reasons] } }),
    missing('い三'),
    missing('い四', { least: 'lath-on' }),
    missing('ろ一', { place: '' }),
  ]);
  expect(
    groups.map(({ place, rows }) => [
      place,
      rows.map(({ least, reason, lines }) => [least, reason, lines.map(({ mark }) => mark).join()]),
    ]),
  ).toEqual([
    [
      '北の壁',
      [
        ['pegged', 'no-photo', 'い一,い三'],
        ['pegged', 'before-stage', 'い二'],
        ['lath-on', 'no-photo', 'い四'],
      ],
    ],
    ['', [['pegged', 'no-photo', 'ろ一']]],
  ]);
});

describe('a day in words', () => {
  const nothing: BriefDayView = {
    day: '2026-04-02',
    photos: 0,
    pictures: [],
    shown: [],
    tags: 0,
    tagsElsewhere: 0,
    statements: 0,
    members: 0,
    notes: [],
    closed: [],
    addedBy: [],
    taggedBy: [],
    inspected: [],
  };
  const shown: BriefDayView['shown'] = [
    { stage: 'raised', members: 1, marks: ['ろ一' as Mark] },
    { stage: 'pegged', members: 5, marks: ['い一', 'い二', 'い三'] as Mark[] },
  ];
  test('says what was said of inspections, and of how many more', async () => {
    const inspected: BriefDayView['inspected'] = [
      { what: 'ready', names: ['North wall', 'Loft'], count: 4 },
      { what: 'doubted', names: ['い一'], count: 1 },
    ];
    expect(dayLine(await wordsOf('en'), 'en', { ...nothing, inspected })).toBe(
      'Ready for inspection: North wall, Loft, and 2 more. Tags doubted of い一.',
    );
    expect(dayLine(await wordsOf('ja'), 'ja', { ...nothing, inspected })).toBe(
      '検査を依頼：North wall、Loft、ほか2件。記入に疑義：い一。',
    );
  });
  test('says by stage which members its photos show, the first by mark', async () => {
    const [en, ja] = [await wordsOf('en'), await wordsOf('ja')];
    const closed = [
      { id: 'c', name: 'North wall', phase: 'under-release' as const },
      { id: 'd', name: 'Loft', phase: 'without-release' as const },
    ];
    const day = { ...nothing, photos: 9, shown, closed };
    expect(dayLine(en, 'en', day)).toBe(
      'ろ一 raised; い一, い二, い三 and 2 more pegged. North wall closed under release. Loft closed without release.',
    );
    expect(dayLine(ja, 'ja', day)).toBe(
      'ろ一 建て方、い一、い二、い三、ほか2本 緊結。承認を受けてNorth wallをふさいだ。承認なしにLoftをふさいだ。',
    );
    expect(marksWords(en, 'en', { stage: 'pegged', members: 1, marks: ['い一' as Mark] })).toBe('い一');
  });
  test('says what was done without any tag on its photos', async () => {
    const t = await wordsOf('en');
    expect(dayLine(t, 'en', { ...nothing, photos: 1, statements: 1 })).toBe('1 photo, not tagged yet.');
    expect(dayLine(t, 'en', { ...nothing, tagsElsewhere: 4, tags: 4, statements: 4 })).toBe(
      '4 tags on photos of other days.',
    );
    expect(dayLine(t, 'en', { ...nothing, statements: 2 })).toBe('2 statements and no photo.');
    expect(dayLine(t, 'en', nothing)).toBe('');
  });
  test('says apart who added the photos and who said what they show', async () => {
    const t = await wordsOf('en');
    const of = (addedBy: string[], taggedBy: string[]) =>
      peopleWords(t, 'en', { ...nothing, addedBy, taggedBy });
    expect(of(['Haru'], ['Aki'])).toBe('Tagged by Aki. Photos added by Haru.');
    expect(of(['Haru'], ['Haru'])).toBe('Photos and tags by Haru.');
    expect(of([], [])).toBe('');
  });
  test('counts what was done so far', async () => {
    const t = await wordsOf('en');
    expect(countWords(t, 'en', { ...nothing, photos: 2, tags: 1, statements: 3 })).toBe('2 photos, 1 tag');
    expect(countWords(t, 'en', { ...nothing, statements: 3 })).toBe('3 statements');
    expect(countWords(t, 'en', nothing)).toBe('');
  });
});

describe('the first steps of a fresh house', () => {
  const fresh = {
    role: 'owner',
    firstDay: null,
    counts: { members: 0, photos: 0, tags: 0, coverings: 0 },
  } as HouseView;
  const words = (house: HouseView) =>
    firstSteps(house).map(({ word, isDone }) => (isDone ? `${word} done` : word));
  test('stand in order, and what is done as done', () => {
    expect(words(fresh)).toEqual(['schedule', 'photos', 'covering', 'firstDay']);
    const counts = { ...fresh.counts, members: 3 };
    expect(words({ ...fresh, firstDay: '2026-04-01', counts })).toEqual([
      'schedule done',
      'photos',
      'covering',
      'firstDay done',
    ]);
  });
  test('are not asked of those who may not do them', () => {
    expect(words({ ...fresh, role: 'carpenter' })).toEqual(['schedule', 'photos', 'covering']);
    expect(words({ ...fresh, role: 'inspector' })).toEqual(['photos']);
    expect(words({ ...fresh, role: 'builder' })).toEqual([]);
  });
  test('are over once the record runs, even without a first day', () => {
    expect(words({ ...fresh, counts: { members: 1, photos: 1, tags: 0, coverings: 1 } })).toEqual([]);
  });
});
