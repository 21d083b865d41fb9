import { expect, test } from 'vitest';
import { toldTime } from '../../../client/check/told-time.ts';
import { wordsOf } from '../words.ts';

const AT = '2026-04-03T01:29:00.000Z';

test.each([
  ['en', 'UTC', '3 Apr 2026, 01:29 UTC'],
  ['ja', 'UTC', '2026年4月3日 01:29（UTC）'],
  ['en', 'Asia/Tokyo', '3 Apr 2026, 10:29, Japan Standard Time (+09:00); 3 Apr 2026, 01:29 UTC'],
] as const)('a time in %s of a house in %s is told once where that says it all', async (lang, zone, told) =>
  expect(toldTime(await wordsOf(lang), lang, AT, zone)).toBe(told),
);

test('where clocks change with the season the offset is told, though it is none in winter', async () => {
  const told = toldTime(await wordsOf('en'), 'en', '2026-01-03T01:29:00.000Z', 'Europe/London');
  expect(told).toContain('+00:00 / +01:00');
});
