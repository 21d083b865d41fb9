import { WHOLE_LINE } from '../../support/whole-line.ts';
import { describe, expect, test } from 'vitest';
import type { ClosingReportView } from '#domain/contract/report-views';
import { MISS_REASONS } from '#domain/contract/report-views';
import type { Mark } from '#domain/frame/mark';
import { cssString, marginRule } from '../../../client/screens/report/margin-rule.ts';
import { missingByReason } from '../../../client/screens/report/missing-by-reason.ts';
import { missSentence } from '../../../client/screens/report/miss-sentence.ts';
import { eachPhotoOnce } from '../../../client/screens/report/each-photo-once.ts';
import { closedLast } from '../../../client/screens/report/closed-last.ts';
import { onlyMissing } from '../../../client/screens/report/only-missing.ts';
import { LANGUAGES, wordsOf } from '../words.ts';

type Covering = ClosingReportView['days'][number]['coverings'][number];
type Line = Covering['lines'][number];

const line = (mark: string, more: Partial<Line> = {}): Line => ({
  mark: mark as Mark,
  kind: '貫',
  place: '',
  least: 'pegged',
  state: 'gap',
  records: [],
  ...WHOLE_LINE,
  nearestMiss: { reasons: ['no-photo'], tag: null },
  ...more,
});
const seen = {
  tag: 't',
  photo: 'p',
  stage: 'raised',
  instant: '2026-04-03T05:20:00.000Z',
  uncertaintyS: 60,
  datedBy: 'file',
  legibility: 'clear',
  findings: [],
} satisfies Line['records'][number];
const early: Line = line('い三', { nearestMiss: { reasons: ['before-stage'], tag: seen } });

describe('the nearest miss in words', () => {
  test('names the stage that is needed and the one that was seen, in the time of the site', async () => {
    expect(missSentence(await wordsOf('en'), 'en', 'Asia/Tokyo', early)).toBe(
      'photographed, but before the stage “pegged” (raised, 3 Apr 2026, 14:20)',
    );
    expect(missSentence(await wordsOf('ja'), 'ja', 'Asia/Tokyo', early)).toBe(
      '写真はあるが「緊結」より前（建て方、2026年4月3日 14:20）',
    );
  });
  test('has other words once it is lost', async () => {
    const t = await wordsOf('en');
    expect(missSentence(t, 'en', 'Asia/Tokyo', { ...early, state: 'lost' })).toMatch(
      /^it was covered; the last photo/,
    );
  });
  test('says every reason', async () => {
    const reasons: Line = line('い三', {
      nearestMiss: { reasons: ['before-stage', 'undated'], tag: { ...seen, instant: null } },
    });
    expect(missSentence(await wordsOf('en'), 'en', 'Asia/Tokyo', reasons)).toBe(
      'photographed, but before the stage “pegged” (raised); that photo also has no date',
    );
  });
  test('is empty where there is a record', async () => {
    const t = await wordsOf('en');
    expect(missSentence(t, 'en', 'Asia/Tokyo', line('い三', { state: 'on-record', nearestMiss: null }))).toBe(
      '',
    );
  });
  test.each(LANGUAGES)('reads whole for each reason, open or lost, in %s', async (lang) => {
    const t = await wordsOf(lang);
    for (const state of ['gap', 'lost'] as const)
      for (const reason of MISS_REASONS) {
        const tag = reason === 'no-photo' ? null : seen;
        const text = missSentence(
          t,
          lang,
          'Asia/Tokyo',
          line('い三', { state, nearestMiss: { reasons: [reason], tag } }),
        );
        expect(text).toMatch(/^[^{}]{6,}$/u);
        expect(text).not.toMatch(/report\.|\(\)|（）/);
      }
  });
});

describe('only what is missing', () => {
  const covering = (name: string, ...lines: Line[]) => ({ id: name, name, lines }) as Covering;
  test('leaves gaps and lost ones, and only the coverings and days that have such', () => {
    const found = onlyMissing([
      { day: '2026-04-20', coverings: [covering('done', line('い一', { state: 'on-record' }))] },
      {
        day: null,
        coverings: [
          covering('open', line('い二'), line('い三', { state: 'lost' }), line('い四', { state: 'retired' })),
          covering('empty'),
        ],
      },
    ]);
    expect(found.map(({ day }) => day)).toEqual([null]);
    expect(found[0]?.coverings.map(({ name, lines }) => [name, lines.map(({ mark }) => mark)])).toEqual([
      ['open', ['い二', 'い三']],
    ]);
  });
});

test('what has closed stands after all that is open, in both parts by day', () => {
  const covering = (id: string, closedAt: string | null, gaps = 0) =>
    ({ id, closedAt, counts: { gaps } }) as Covering;
  const { open, closed } = closedLast([
    { day: '2026-03-31', coverings: [covering('one face', '2026-03-31T03:00:00.000Z', 2)] },
    { day: '2026-04-01', coverings: [covering('a', '2026-04-01T03:00:00.000Z')] },
    { day: '2026-04-02', coverings: [covering('b', '2026-04-02T03:00:00.000Z'), covering('c', null)] },
    { day: null, coverings: [covering('d', null)] },
  ]);
  expect(open.map(({ day, coverings }) => [day, coverings.map(({ id }) => id)])).toEqual([
    // Its other face is open: what is missing can be photographed from there.
    ['2026-03-31', ['one face']],
    ['2026-04-02', ['c']],
    [null, ['d']],
  ]);
  expect(closed.map(({ id }) => id)).toEqual(['a', 'b']);
});

describe('words in the margins of a printed page', () => {
  test('cannot end their string, their rule or their element', () => {
    expect(cssString('Boathouse')).toBe('"Boathouse"');
    expect(cssString('a"b\\c\nd</style>')).toBe('"a\\22 b\\5c c\\a d\\3c /style\\3e "');
    expect(marginRule('舟小屋', 'now')).toBe(
      '@page { @top-left { content: "舟小屋"; } @top-right { content: "now"; } }',
    );
  });
});

test('what is missing is gathered by reason, the most frequent first', () => {
  const two = ['い一', 'い二'].map((mark) => line(mark));
  const onRecord = line('い三', { state: 'on-record', nearestMiss: null });
  const lines = [line('ろ一', { nearestMiss: early.nearestMiss }), onRecord, ...two];
  expect(missingByReason(lines)).toEqual([
    { reason: 'no-photo', marks: ['い一', 'い二'] },
    { reason: 'before-stage', marks: ['ろ一'] },
  ]);
});

test('a photo with two tags of one stage is said once, of two stages twice', () => {
  const record = (tag: string, photo: string, stage: 'raised' | 'pegged') => ({
    tag,
    photo,
    stage,
    instant: null,
    uncertaintyS: 0,
    datedBy: null,
    legibility: null,
    findings: [],
  });
  const all = [record('a', 'p', 'pegged'), record('b', 'p', 'pegged'), record('c', 'q', 'pegged')];
  expect(eachPhotoOnce([...all, record('d', 'p', 'raised')]).map(({ tag }) => tag)).toEqual(['a', 'c', 'd']);
});
