import { describe, expect, it } from 'vitest';
import { decideCapture } from '#domain/photo/capture-time';
import { nearestRealOffset } from '#domain/photo/real-offsets';
import { assertDated, someReadings } from '../../support/some-readings.ts';

/**
 * The difference of local time and GPS UTC read as an offset. Expected values: ExifTool 12.57 with its
 * optional config time_zone.config (run), and the zone rule of exiftool-vendored (src/Timezones.ts, read:
 * nearest offset in real use, at most 30 minutes away). We follow the second where no house zone decides,
 * because +09:15 exists nowhere; we leave it where the house's own zone fits (see the last test).
 */
const TABLE: readonly [local: string, gps: string, exiftool: number, vendored: number][] = [
  ['2026-04-01T09:30:00', '2026-04-01T00:30:00Z', 540, 540],
  ['2026-04-01T09:30:00', '2026-04-01T00:29:10Z', 540, 540],
  ['2026-04-01T09:30:00', '2026-04-01T00:23:00Z', 540, 540],
  ['2026-04-01T09:30:00', '2026-04-01T00:22:00Z', 555, 540],
  ['2026-04-01T09:30:00', '2026-04-01T00:37:00Z', 540, 540],
  ['2026-04-01T09:30:00', '2026-04-01T00:38:00Z', 525, 525],
  ['2026-04-01T08:10:00', '2026-03-31T23:10:00Z', 540, 540],
  ['2026-01-15T11:30:45', '2026-01-15T19:29:58Z', -480, -480],
  ['2026-01-15T15:15:00', '2026-01-15T09:30:00Z', 345, 345],
  ['2026-01-15T12:00:00', '2026-01-14T22:00:00Z', 840, 840],
];

/** Minutes to offset, from the same project's Timezones.spec.ts (read). */
const NEAREST: readonly [minutes: number, offset: number][] = [
  [485, 480],
  [-295, -300],
  [330.5, 330],
  [495, 480],
  [505, 510],
  [100, 120],
  [666, 660],
  [443, 420],
  [496, 510],
  [526, 525],
  [556, 570],
  [343, 345],
];

describe('an offset from the difference to GPS', () => {
  it.each(TABLE)('%s against GPS %s', (local, gps, _exiftool, vendored) => {
    // A house far from all of these zones, so that its own zone never fits.
    const readings = someReadings({ wallTime: local, gpsTime: gps.replace('Z', '.000Z') });
    const capture = assertDated(decideCapture(readings, 'Pacific/Marquesas'));
    expect(capture).toMatchObject({ source: 'gps-offset', offsetMinutes: vendored });
  });

  it.each(NEAREST)('%d minutes are nearest to %d', (minutes, offset) => {
    expect(nearestRealOffset(minutes).offsetMinutes).toBe(offset);
  });

  it('finds nothing within 30 minutes of 24 hours', () => {
    expect(nearestRealOffset(1440).missMinutes).toBeGreaterThan(30);
  });

  it.each(TABLE.slice(0, 7))("at a Japanese house %s against GPS %s is the house's zone", (local, gps) => {
    const readings = someReadings({ wallTime: local, gpsTime: gps.replace('Z', '.000Z') });
    const capture = assertDated(decideCapture(readings, 'Asia/Tokyo'));
    expect(capture).toMatchObject({ source: 'house-zone-and-gps', offsetMinutes: 540, flags: [] });
  });
});
