import { describe, expect, test } from 'vitest';
import type { Mark } from '#domain/frame/mark';
import {
  closingTime,
  lostByClosing,
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
  const counts = { hidden: 3, onRecord: 3, firm: 3, gaps: 0, lost: 0, retired: 0 };
  expect(isTimeToClose({ counts, daysLeft: 0 })).toBe(true);
  expect(isTimeToClose({ counts, daysLeft: -2 })).toBe(true);
  expect(isTimeToClose({ counts, daysLeft: 1 })).toBe(false);
  expect(isTimeToClose({ counts, daysLeft: null })).toBe(false);
  expect(isTimeToClose({ counts: { ...counts, gaps: 1 }, daysLeft: 0 })).toBe(false);
});
