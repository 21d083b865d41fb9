import type { Readings } from '../contract/shapes.ts';
import type { ClockMark } from './clock-correction.ts';
import { atOffset, instantMs, inZone, wallMs, type Reading } from './wall-time.ts';

/** What a file says of the clock in the camera. */
export type Shown = Pick<Readings, 'wallTime' | 'offsetMinutes'>;

/** A clock mark as it was said. */
export interface SaidMark {
  readonly id: string;
  readonly shown: Shown;
  readonly trueTime: string;
  readonly withinS: number;
}

/**
 * The camera's clock as an instant: the wall time by its own offset, else by the house's zone (IANA).
 * Of an hour that came twice the first reading, of one that never was the clock not yet moved (RFC 5545
 * §3.3.5), so that a mark and a photo with one wall time read alike. Null without a usable wall time.
 */
export function readClock({ wallTime, offsetMinutes }: Shown, zone: string): Reading | null {
  const wall = wallTime === null ? null : wallMs(wallTime);
  if (wall === null) return null;
  if (offsetMinutes !== null) return atOffset(wall, offsetMinutes);
  const { hour, readings } = inZone(wall, zone);
  return (hour === 'skipped' ? readings[1] : undefined) ?? readings[0];
}

/** Marks by whose reading the house's zone decides; those whose times no calendar has are left out. */
export function readMarks(said: readonly SaidMark[], zone: string): ClockMark[] {
  return said.flatMap(({ id, shown, trueTime, withinS }) => {
    const clock = readClock(shown, zone);
    const truly = instantMs(trueTime);
    if (clock === null || truly === null) return [];
    return [{ id, clockMs: clock.ms, deltaMs: truly - clock.ms, withinS }];
  });
}
