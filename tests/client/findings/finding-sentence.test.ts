import { describe, expect, test } from 'vitest';
import type { FindingView } from '#domain/contract/findings';
import type { Mark } from '#domain/frame/mark';
import { FINDING_KINDS, type FindingKind } from '#domain/record/findings/kinds';
import { LANGUAGES, type Language } from '../../../client/i18n/language.ts';
import { findingSentence } from '../../../client/screens/findings/finding-sentence.ts';
import { findingWays } from '../../../client/screens/findings/finding-ways.ts';
import { wordsOf } from '../words.ts';

const MARK = 'い三' as Mark;
const TAKEN = '2026-04-03T05:20:00.000Z';
const FACTS: Partial<Record<FindingKind, FindingView['facts'][]>> = {
  'places-at-once': [{ distance: 1200 }],
  'off-site': [{ distance: 5000, error: 12 }],
  'readers-differ': [{ 'wallTime.first': '2026-04-01T09:30:00', 'wallTime.second': '2026-04-08T09:30:00' }],
  'clock-disagrees': [{ why: 'gps-disagrees' }, { why: 'camera-not-in-house-zone' }],
  'time-unsure': [
    { why: 'ambiguous-hour', within: 3600 },
    { why: 'skipped-hour', within: 3600 },
    { why: 'zone-not-read', within: 300 },
    { why: 'clock-set-between-marks', within: 2220 },
  ],
  'no-date': [{ why: 'none' }, { why: 'implausible-year' }],
  'same-picture': [
    { bits: 3, one: TAKEN },
    { bits: 3, one: TAKEN, other: '2026-04-01T05:20:00.000Z' },
  ],
  'before-first-day': [{ taken: TAKEN }],
  'after-upload': [{ taken: TAKEN }],
  unreadable: [{ why: 'too-small blurred' }],
  'shown-after-closing': [{ name: 'North wall', closed: TAKEN }],
  disputed: [{ at: TAKEN, by: 'Sato', reason: 'this is the next post' }],
  'closed-without-release': [
    { name: 'North wall', why: '' },
    { name: 'North wall', why: 'rain' },
  ],
  'release-taken-back': [{ name: 'North wall', at: TAKEN, by: 'Sato', reason: 'another wall was meant' }],
  'closed-with-gaps': [
    { name: 'North wall', count: 1 },
    { name: 'North wall', count: 3 },
  ],
};
const finding = (kind: FindingKind, more: Partial<FindingView> = {}): FindingView => ({
  ...{ key: `${kind}:x`, kind, basis: 'b', photos: ['p'], marks: [MARK], covering: 'c', facts: {} },
  tags: [
    { tag: 't', photo: 'p', mark: MARK, stage: 'raised' },
    { tag: 'u', photo: 'p', mark: MARK, stage: 'pegged' },
  ],
  ...{ shown: [], taggedBy: null, stops: false, answer: null },
  ...more,
});
const say = async (lang: Language, found: FindingView) =>
  findingSentence(await wordsOf(lang), lang, { zone: 'Asia/Tokyo', firstDay: '2026-04-01' }, found);

describe('what a finding says', () => {
  test.each(LANGUAGES)(
    'is a whole sentence for every kind and all that it may rest on, in %s',
    async (lang) => {
      for (const kind of FINDING_KINDS)
        for (const facts of FACTS[kind] ?? [{}]) {
          const text = await say(lang, finding(kind, { facts }));
          expect(text, kind).toMatch(lang === 'ja' ? /。$/ : /^[^a-z].*\.$/s);
          expect(text, kind).not.toMatch(/findings\.|unread\.|[{}]|undefined|NaN|\(\)|（）/);
        }
    },
  );
  test('gives both values of a file that gives two, with the one that is used', async () => {
    const [facts = {}] = FACTS['readers-differ'] ?? [];
    expect((await say('en', finding('readers-differ', { facts }))).replaceAll('\u2011', '-')).toBe(
      'Read twice, in two ways, the file gives different values. ' +
        'The time of capture: 2026-04-01\u00a009:30:00 or 2026-04-08\u00a009:30:00. The first is used.',
    );
  });
  test.each([
    [
      { one: TAKEN, other: '2026-04-01T05:20:00.000Z' },
      /one is of 1 Apr 2026, 14:20 and the other of 3 Apr 2026, 14:20/,
    ],
    [{ other: TAKEN }, /only one has a date: 3 Apr 2026, 14:20/],
  ])('tells two pictures of %j apart by their times', async (times, text) => {
    expect(await say('en', finding('same-picture', { facts: { bits: 3, ...times } }))).toMatch(text);
  });
  test('says by how much a time may be wrong in the unit that fits', async () => {
    const unsure = (within: number) =>
      say('en', finding('time-unsure', { facts: { why: 'clock-set-between-marks', within } }));
    expect(await unsure(60)).toMatch(/wrong by 60 s\.$/);
    expect(await unsure(2220)).toMatch(/wrong by 37 min\.$/);
    expect(await unsure(7200)).toMatch(/wrong by 2 h\.$/);
  });
  test('leads only to screens of the house', () => {
    for (const kind of FINDING_KINDS)
      for (const { to } of findingWays('h', finding(kind)))
        expect(to).toMatch(/^\/houses\/h\/(settings|cameras|members(\/%E3%81%84%E4%B8%89)?|coverings\/c)$/);
  });

  test('names the first day that a photo lies before', async () => {
    const [early = {}] = FACTS['before-first-day'] ?? [];
    expect(await say('en', finding('before-first-day', { facts: early }))).toContain('1 Apr 2026');
  });
});
