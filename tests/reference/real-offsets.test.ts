import { Temporal } from 'temporal-polyfill';
import { expect, it } from 'vitest';
import { REAL_OFFSETS } from '#domain/photo/real-offsets';

const DAYS_30 = 30 * 86_400_000;

/** Every offset that the running engine's IANA zones kept from 2010 to 2026, looked at every 30 days. */
function offsetsOfTheEngine(): number[] {
  const from = Temporal.Instant.from('2010-01-01T00:00Z').epochMilliseconds;
  const to = Temporal.Instant.from('2027-01-01T00:00Z').epochMilliseconds;
  const found = new Set<number>();
  for (const zone of Intl.supportedValuesOf('timeZone').filter((name) => !name.startsWith('Etc/'))) {
    for (let ms = from; ms < to; ms += DAYS_30) {
      found.add(Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(zone).offsetNanoseconds / 60e9);
    }
  }
  return [...found].sort((a, b) => a - b);
}

it('lists the offsets of the IANA time zone database as the engine carries it', () => {
  expect(REAL_OFFSETS).toEqual(offsetsOfTheEngine());
});
