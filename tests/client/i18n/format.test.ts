import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { dayIn, formatBytes, formatDay, formatInstant, formatTime } from '../../../client/i18n/format.ts';

// The reference is Temporal (TC39 proposal), as implemented by temporal-polyfill.
test.each(['Asia/Tokyo', 'America/St_Johns', 'Pacific/Apia', 'UTC'])('the day in %s', (zone) => {
  for (let hour = 0; hour < 24 * 400; hour += 7) {
    const at = new Date(Date.UTC(2026, 0, 1, hour, 31));
    const expected = Temporal.Instant.from(at.toISOString()).toZonedDateTimeISO(zone).toPlainDate();
    expect(dayIn(zone, at)).toBe(expected.toString());
  }
});

describe('what a person reads', () => {
  const instant = '2026-04-01T00:30:00.000Z';
  test('is in the zone of the house', () => {
    expect(formatInstant(instant, 'Asia/Tokyo', 'en')).toBe('1 Apr 2026, 09:30');
    expect(formatInstant(instant, 'Asia/Tokyo', 'ja')).toBe('2026年4月1日 09:30');
    expect(formatTime(instant, 'Asia/Tokyo', 'ja')).toBe('09:30');
  });
  test('a day does not slip by a zone', () => {
    expect(formatDay('2026-04-01', 'en')).toBe('Wed, 1 Apr 2026');
    expect(formatDay('2026-04-01', 'ja')).toBe('2026年4月1日（水）');
  });
  test('midnight begins a day instead of ending one', () => {
    expect(formatInstant('2026-03-31T15:00:00.000Z', 'Asia/Tokyo', 'ja')).toBe('2026年4月1日 00:00');
    expect(formatInstant('2026-03-31T15:00:00.000Z', 'Asia/Tokyo', 'en')).toBe('1 Apr 2026, 00:00');
  });
  test('a zone that the browser does not know is shown as UTC and says so', () => {
    expect(formatTime(instant, 'Mars/Olympus', 'en')).toMatch(/00:30.*UTC/);
  });
});

// SI prefixes, ISO 80000-1: k = 1000, M = 1,000,000.
test.each([
  [0, '0 B'],
  [999, '999 B'],
  [1000, '1 kB'],
  [48_600, '49 kB'],
  [999_499, '999 kB'],
  [999_500, '1 MB'],
  [3_449_000, '3.4 MB'],
  [104_857_600, '104.9 MB'],
])('%i bytes are %s', (bytes, text) => {
  expect(formatBytes(bytes, 'en')).toBe(text);
  expect(formatBytes(bytes, 'ja')).toBe(text);
});
