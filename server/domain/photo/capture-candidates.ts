import type { CaptureSource } from '../contract/capture.ts';
import { nearestRealOffset, type OffsetFit } from './real-offsets.ts';
import { atOffset, inZone, zoneOffset, type Reading, type ZoneReading } from './wall-time.ts';

/** Tolerances in minutes. Source: design §3.1; `fresh` is common practice, see `inferred`. */
export const MINUTES = { confirm: 15, infer: 30, fresh: 5 } as const;
/** A GPS time this near to the wall time repeats the camera's clock. Seen to be exact in real files. */
const SAME_CLOCK_MS = 2000;

export interface Candidate extends Reading {
  readonly source: CaptureSource;
}

/** Every way in which a believable wall time could become an instant, before one is chosen. */
export interface Candidates {
  readonly gpsMs: number | null;
  readonly own: Candidate | null;
  readonly hour: ZoneReading['hour'];
  /** One reading in the house's zone, or two around a change of the clocks; nearest to GPS first where GPS decides. */
  readonly house: readonly [Candidate, ...Candidate[]];
  readonly gpsOffset: Candidate | null;
  readonly gpsFit: OffsetFit | null;
  readonly gpsRepeatsClock: boolean;
  readonly gpsOnly: Candidate | null;
}

/** `deltaMs` is what the camera's clock was wrong by; its zone is read off the clock as it stood. */
export function candidatesOf(
  wall: number,
  own: number | null,
  gpsMs: number | null,
  zone: string,
  deltaMs = 0,
): Candidates {
  const { hour, readings } = inZone(wall, zone);
  const truly = wall + deltaMs;
  const fit = gpsMs === null ? null : nearestRealOffset((truly - gpsMs) / 60_000);
  const house = houseCandidates(hour, readings, gpsMs, deltaMs);
  return {
    gpsMs,
    own: own === null ? null : { ...atOffset(truly, own), source: 'own-offset' },
    hour,
    house,
    gpsOffset: gpsMs === null || !fit ? null : offsetCandidate(truly, gpsMs, fit),
    gpsFit: fit,
    gpsRepeatsClock: gpsMs !== null && repeatsClock(wall, gpsMs, house[0]),
    gpsOnly: gpsMs === null ? null : gpsCandidate(gpsMs, zone),
  };
}

export function gpsCandidate(gpsMs: number, zone: string): Candidate {
  return { ms: gpsMs, offsetMinutes: zoneOffset(gpsMs, zone), source: 'gps-only' };
}

export function minutesApart(a: number, b: number): number {
  return Math.abs(a - b) / 60_000;
}

/**
 * GPS tells the two readings of an hour apart. Without it the first reading of an ambiguous hour is
 * taken, and for a skipped hour the clock that was not yet moved: both as RFC 5545 §3.3.5 has it.
 */
function houseCandidates(
  hour: ZoneReading['hour'],
  readings: ZoneReading['readings'],
  gpsMs: number | null,
  deltaMs: number,
): Candidates['house'] {
  const [first, second] = readings;
  const order: [Reading, ...Reading[]] = !second
    ? [first]
    : hour === 'skipped'
      ? [second, first]
      : [first, second];
  const close = (r: Reading): boolean => gpsMs !== null && minutesApart(r.ms, gpsMs) <= MINUTES.confirm;
  const named = (r: Reading): Candidate => ({ ...r, source: close(r) ? 'house-zone-and-gps' : 'house-zone' });
  const [a, b] = order.map((r) => ({ ...r, ms: r.ms + deltaMs })) as typeof order;
  if (!b) return [named(a)];
  return close(b) && !close(a) ? [named(b), named(a)] : [named(a), named(b)];
}

function offsetCandidate(wall: number, gpsMs: number, fit: OffsetFit): Candidate {
  const measured = Math.round((wall - gpsMs) / 60_000);
  const offset = fit.missMinutes <= MINUTES.infer ? fit.offsetMinutes : measured;
  return { ...atOffset(wall, offset), source: 'gps-offset' };
}

/** True where taking GPS at its word would put the camera on UTC although the house is not: then it holds local time. */
function repeatsClock(wall: number, gpsMs: number, house: Candidate): boolean {
  return Math.abs(wall - gpsMs) <= SAME_CLOCK_MS && minutesApart(house.ms, gpsMs) > MINUTES.confirm;
}
