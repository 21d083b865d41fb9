import { WHOLE_LINE } from '../../support/whole-line.ts';
import { describe, expect, test } from 'vitest';
import type { Mark } from '#domain/frame/mark';
import {
  closingTime,
  leftByClosing,
  lostByClosing,
  weighedByClosing,
  whenFault,
  type CoveringLine,
  isTimeToClose,
} from '../../../client/screens/coverings/closing-preview.ts';

const line = (mark: string, state: CoveringLine['state'], ...instants: (string | null)[]): CoveringLine => ({
  mark: mark as Mark,
  kind: '',
  place: '',
  least: 'pegged',
  state,
  records: instants.map((instant, i) => ({
    tag: `t${i}`,
    photo: `p${i}`,
    stage: 'pegged',
    instant,
    uncertaintyS: 0,
    datedBy: instant === null ? null : 'file',
    legibility: null,
    findings: [],
  })),
  ...WHOLE_LINE,
  nearestMiss: null,
});

describe('what a closing would lose', () => {
  const lines = [
    line('gap', 'gap'),
    line('before', 'on-record', '2026-04-03T05:00:00.000Z'),
    line('after', 'on-record', '2026-04-03T07:00:00.000Z'),
    line('both', 'on-record', '2026-04-03T07:00:00.000Z', '2026-04-03T05:00:00.000Z'),
    line('at once', 'on-record', '2026-04-03T06:00:00.000Z'),
    line('retired', 'retired'),
  ];
  test('the gaps, and what was photographed only at the closing or later', () => {
    expect(lostByClosing(lines, '2026-04-03T06:00:00.000Z').map(({ mark }) => mark)).toEqual([
      'gap',
      'after',
      'at once',
    ]);
  });
  test('now: the gaps alone', () => {
    expect(lostByClosing(lines, '2026-04-04T00:00:00.000Z').map(({ mark }) => mark)).toEqual(['gap']);
  });
});

describe('what closing one face of a wall would lose', () => {
  const gap = line('gap', 'gap');
  const early = line('early', 'on-record', '2026-04-03T05:00:00.000Z');
  const late = line('late', 'on-record', '2026-04-03T07:00:00.000Z');
  const lost = (closing: string, otherFace: CoveringLine['otherFace']) =>
    lostByClosing(
      [gap, early, late].map((one) => ({ ...one, otherFace })),
      closing,
    ).map(({ mark }) => mark);
  const face = (closedAt: string | null) => ({ towards: 'ろ', closedAt, plannedDay: null });
  test('nothing while the other is open; those stay gaps', () => {
    expect(lost('2026-04-03T06:00:00.000Z', face(null))).toEqual([]);
    const lines = [{ ...gap, otherFace: face(null) }, early];
    expect(leftByClosing(lines, '2026-04-03T06:00:00.000Z').map(({ mark }) => mark)).toEqual(['gap']);
  });
  test('what has no photo from before the later of both closings', () => {
    expect(lost('2026-04-03T06:00:00.000Z', face('2026-04-02T00:00:00.000Z'))).toEqual(['gap', 'late']);
    expect(lost('2026-04-03T06:00:00.000Z', face('2026-04-03T08:00:00.000Z'))).toEqual(['gap']);
    expect(leftByClosing([{ ...gap, otherFace: face('2026-04-02T00:00:00.000Z') }], '2026-04-03')).toEqual(
      [],
    );
  });
  test('nothing of what an earlier layer had hidden', () =>
    expect(lostByClosing([line('before', 'hidden-before')], '2026-04-03T06:00:00.000Z')).toEqual([]));
});

describe('what is to be weighed at a closing', () => {
  type Evidence = CoveringLine['records'][number];
  const before = '2026-04-03T05:00:00.000Z';
  const after = '2026-04-03T07:00:00.000Z';
  const closing = '2026-04-03T06:00:00.000Z';
  const found = { kind: 'off-site', accepted: null } as const;
  const withRecords = (mark: string, ...records: [at: string, more: Partial<Evidence>][]): CoveringLine => {
    const plain = line(mark, 'on-record', ...records.map(([at]) => at));
    return {
      ...plain,
      records: plain.records.map((record, i) => ({ ...record, ...(records[i]?.[1] ?? {}) })),
    };
  };
  const marks = (lines: CoveringLine[], at = closing) =>
    weighedByClosing(lines, at).map(({ line: { mark } }) => mark);

  test('is what has only records with a finding, answered or not, hard to read, or dated by hand', () =>
    expect(
      marks([
        withRecords('firm', [before, {}]),
        withRecords('clear', [before, { legibility: 'clear' }]),
        withRecords('clock', [before, { datedBy: 'clock-mark' }]),
        withRecords('finding', [before, { findings: [found] }]),
        withRecords('accepted', [
          before,
          { findings: [{ ...found, accepted: { by: 'Haru', reason: 'seen on site' } }] },
        ]),
        withRecords('weak', [before, { legibility: 'weak' }]),
        withRecords('by hand', [before, { datedBy: 'by-hand' }]),
        withRecords('one of two', [before, {}], [before, { legibility: 'weak' }]),
      ]),
    ).toEqual(['finding', 'accepted', 'weak', 'by hand']));

  test('is told with the best record from before the closing', () => {
    const two = withRecords('two', [after, {}], [before, { legibility: 'weak' }]);
    expect(marks([two], '2026-04-04T00:00:00.000Z')).toEqual([]);
    expect(weighedByClosing([two], closing)).toEqual([{ line: two, record: two.records[1] }]);
  });

  test('is no firm record that may as well be from after it', () => {
    const unsure = withRecords(
      'unsure',
      [before, { uncertaintyS: 43_200 }],
      [before, { datedBy: 'by-hand' }],
    );
    expect(marks([unsure])).toEqual(['unsure']);
    expect(marks([unsure], '2026-04-04T00:00:00.000Z')).toEqual([]);
  });

  test('is nothing that is lost, missing or retired: every member is said of once', () => {
    const lines = [
      line('gap', 'gap'),
      withRecords('late', [after, { legibility: 'weak' }]),
      { ...withRecords('retired', [before, { legibility: 'weak' }]), state: 'retired' as const },
      withRecords('weak', [before, { legibility: 'weak' }]),
    ];
    expect(marks(lines)).toEqual(['weak']);
    expect(lostByClosing(lines, closing).map(({ mark }) => mark)).toEqual(['gap', 'late']);
  });
});

describe('the time of a closing on site', () => {
  test('in Japan, which keeps one offset', () =>
    expect(closingTime('2026-04-03T15:30', 'Asia/Tokyo')).toEqual({
      instant: '2026-04-03T06:30:00.000Z',
      hour: 'plain',
    }));
  // IANA tz database, rule EU: clocks change at 01:00 UTC on the last Sundays of March and October.
  test('in an hour that comes twice, the first', () =>
    expect(closingTime('2026-10-25T02:30', 'Europe/Berlin')).toEqual({
      instant: '2026-10-25T00:30:00.000Z',
      hour: 'ambiguous',
    }));
  test('in an hour that never was', () =>
    expect(closingTime('2026-03-29T02:30', 'Europe/Berlin')?.hour).toBe('skipped'));
  test.each(['', '2026-04-03', 'soon', '2026-02-30T10:00'])('"%s" is no time', (text) =>
    expect(closingTime(text, 'Asia/Tokyo')).toBeNull(),
  );
});

describe('a closing that is being said', () => {
  const now = new Date('2026-04-03T06:00:00.000Z');
  const earlier = (text: string) => ({ is: 'earlier', text, time: closingTime(text, 'Asia/Tokyo') }) as const;
  test('lies in the past or just now', () => {
    expect(whenFault({ is: 'now' }, now)).toBeNull();
    expect(whenFault(earlier('2026-04-03T14:59'), now)).toBeNull();
  });
  test('never in the future, never without a time', () => {
    expect(whenFault(earlier('2026-04-03T15:01'), now)).toBe('future');
    expect(whenFault(earlier(''), now)).toBe('badTime');
  });
});

test('closing is the thing to do only on its day and without a gap', () => {
  const counts = { hidden: 3, onRecord: 3, firm: 3, gaps: 0, lost: 0, waived: 0, before: 0, retired: 0 };
  expect(isTimeToClose({ counts, daysLeft: 0 })).toBe(true);
  expect(isTimeToClose({ counts, daysLeft: -2 })).toBe(true);
  expect(isTimeToClose({ counts, daysLeft: 1 })).toBe(false);
  expect(isTimeToClose({ counts, daysLeft: null })).toBe(false);
  expect(isTimeToClose({ counts: { ...counts, gaps: 1 }, daysLeft: 0 })).toBe(false);
});
