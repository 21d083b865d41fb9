import { Temporal } from 'temporal-polyfill';

/** A local time together with one offset that makes it an instant. Milliseconds since 1970, UTC. */
export interface Reading {
  readonly ms: number;
  /** Local time minus UTC, as the clock was read: ms + offset gives the wall time back. */
  readonly offsetMinutes: number;
}

/** What a wall time means in a zone. Around a change of the clocks it has two readings, the earlier first. */
export type ZoneReading =
  | { readonly hour: 'plain'; readonly readings: readonly [Reading] }
  | { readonly hour: 'ambiguous' | 'skipped'; readonly readings: readonly [Reading, Reading] };

/** The wall time as if it were UTC, in ms, or null where no calendar has it. 23:59:60 reads as 23:59:59. */
export function wallMs(wallTime: string): number | null {
  try {
    return Temporal.PlainDateTime.from(wallTime).toZonedDateTime('UTC').epochMilliseconds;
  } catch {
    return null;
  }
}

export function atOffset(wall: number, offsetMinutes: number): Reading {
  return { ms: wall - offsetMinutes * 60_000, offsetMinutes };
}

/** All readings of a wall time in an IANA zone. Throws RangeError for a zone that the engine does not know. */
export function inZone(wall: number, zone: string): ZoneReading {
  const local = Temporal.Instant.fromEpochMilliseconds(wall).toZonedDateTimeISO('UTC').toPlainDateTime();
  const read = (disambiguation: 'earlier' | 'later'): Reading => {
    const { epochMilliseconds: ms } = local.toZonedDateTime(zone, { disambiguation });
    return { ms, offsetMinutes: Math.round((wall - ms) / 60_000) };
  };
  const earlier = read('earlier');
  const later = read('later');
  if (earlier.ms === later.ms) return { hour: 'plain', readings: [earlier] };
  const exists = zoneOffset(earlier.ms, zone) === earlier.offsetMinutes;
  return { hour: exists ? 'ambiguous' : 'skipped', readings: [earlier, later] };
}

/** Offset of a zone at an instant, in whole minutes. */
export function zoneOffset(ms: number, zone: string): number {
  const { offsetNanoseconds } = Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(zone);
  return Math.round(offsetNanoseconds / 60e9);
}

/** UTC with milliseconds, or null where the year does not fit four digits. */
export function instantText(ms: number): string | null {
  const text = Temporal.Instant.fromEpochMilliseconds(ms).toString({ smallestUnit: 'millisecond' });
  return /^\d{4}-/.test(text) ? text : null;
}

/** Milliseconds of an instant in text, or null where no calendar has it. */
export function instantMs(text: string): number | null {
  try {
    return Temporal.Instant.from(text).epochMilliseconds;
  } catch {
    return null;
  }
}
