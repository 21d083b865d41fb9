import { Temporal } from 'temporal-polyfill';
import { expect, test } from 'vitest';
import type { ClosingReportView } from '#domain/contract/views';
import { dayAfter, isDay } from '../../../client/screens/days/day-step.ts';
import { nextClosings } from '../../../client/screens/days/next-closings.ts';

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

test('what closes next stands first, what has no day last, what has closed not at all', () => {
  const covering = (id: string, daysLeft: number | null, closedAt: string | null = null) => ({
    id,
    daysLeft,
    closedAt,
  });
  const days = [
    { coverings: [covering('closed', null, '2026-04-01T00:00:00.000Z'), covering('late', -2)] },
    { coverings: [covering('open-end', null)] },
    { coverings: [covering('soon', 3)] },
    { coverings: [covering('other-open-end', null), covering('today', 0)] },
  ];
  const report = { days } as unknown as ClosingReportView;
  expect(nextClosings(report).map(({ id }) => id)).toEqual([
    'late',
    'today',
    'soon',
    'open-end',
    'other-open-end',
  ]);
});
