import { Temporal } from 'temporal-polyfill';

/** Days of a site: an instant (UTC, ISO 8601) and a zone (IANA) give a day, and back. */

export function isKnownZone(zone: string): boolean {
  // Fixed offsets are accepted by Temporal but are no place with a clock law.
  if (/^[+-]/.test(zone)) return false;
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
}

export function dayOf(instant: string, zone: string): string {
  return Temporal.Instant.from(instant).toZonedDateTimeISO(zone).toPlainDate().toString();
}

/** From the first instant of the day until before the first of the next, as epoch milliseconds; 23 to 25 hours. */
export function spanOfDay(day: string, zone: string): { from: number; to: number } {
  const date = Temporal.PlainDate.from(day);
  const start = (d: Temporal.PlainDate) => d.toZonedDateTime(zone).epochMilliseconds;
  return { from: start(date), to: start(date.add({ days: 1 })) };
}
