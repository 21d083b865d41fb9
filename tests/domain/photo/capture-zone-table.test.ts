import { inferLikelyOffsetMinutes } from 'exiftool-vendored';
import { describe, expect, it } from 'vitest';
import { decideCapture } from '#domain/photo/capture-time';
import { nearestRealOffset } from '#domain/photo/real-offsets';
import { assertDated, someReadings } from '../../support/some-readings.ts';

/** The rule of ExifTool's optional time_zone.config (12.57, read): to the nearest 15 minutes, then within a day. */
function quarterHours(minutes: number): number {
  const rounded = 15 * Math.round(minutes / 15);
  return rounded > 840 ? rounded - 1440 : rounded < -720 ? rounded + 1440 : rounded;
}

interface Row {
  readonly local: string;
  readonly gps: string;
  /** ExifTool 12.57 with that config (run; the last two calculated by its rule). */
  readonly exiftool: number;
  /** The offset in real use nearest to it, at most 30 minutes away: exiftool-vendored 35 (run below). */
  readonly nearest: number;
  /** Ours at a Japanese house, with its flags. */
  readonly ours: number;
  readonly flags?: readonly string[];
}

const AWAY = ['camera-not-in-house-zone'];
/**
 * The difference of local time and GPS UTC read as an offset. We take the nearest offset in use where no
 * house zone decides, because +09:15 exists nowhere, and leave it where the house's own zone fits.
 */
const TABLE: readonly Row[] = [
  { local: '2026-04-01T09:30:00', gps: '2026-04-01T00:30:00Z', exiftool: 540, nearest: 540, ours: 540 },
  { local: '2026-04-01T09:30:00', gps: '2026-04-01T00:29:10Z', exiftool: 540, nearest: 540, ours: 540 },
  { local: '2026-04-01T09:30:00', gps: '2026-04-01T00:23:00Z', exiftool: 540, nearest: 540, ours: 540 },
  { local: '2026-04-01T09:30:00', gps: '2026-04-01T00:22:00Z', exiftool: 555, nearest: 540, ours: 540 },
  { local: '2026-04-01T09:30:00', gps: '2026-04-01T00:37:00Z', exiftool: 540, nearest: 540, ours: 540 },
  { local: '2026-04-01T09:30:00', gps: '2026-04-01T00:38:00Z', exiftool: 525, nearest: 525, ours: 540 },
  { local: '2026-04-01T08:10:00', gps: '2026-03-31T23:10:00Z', exiftool: 540, nearest: 540, ours: 540 },
  {
    ...{ local: '2026-01-15T11:30:45', gps: '2026-01-15T19:29:58Z', exiftool: -480, nearest: -480 },
    ...{ ours: -480, flags: AWAY },
  },
  {
    ...{ local: '2026-01-15T15:15:00', gps: '2026-01-15T09:30:00Z', exiftool: 345, nearest: 345 },
    ...{ ours: 345, flags: AWAY },
  },
  {
    ...{ local: '2026-01-15T12:00:00', gps: '2026-01-14T22:00:00Z', exiftool: 840, nearest: 840 },
    ...{ ours: 840, flags: AWAY },
  },
  // 556 minutes: a fix 16 minutes old at a Japanese house is commoner than a camera set to Adelaide.
  {
    ...{ local: '2026-04-01T09:30:00', gps: '2026-04-01T00:14:00Z', exiftool: 555, nearest: 570 },
    ...{ ours: 540, flags: ['gps-stale'] },
  },
  // 570 minutes to the second is a camera set to Adelaide.
  {
    ...{ local: '2026-04-01T09:30:00', gps: '2026-04-01T00:00:00Z', exiftool: 570, nearest: 570 },
    ...{ ours: 570, flags: AWAY },
  },
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
  it.each(TABLE)('$local against GPS $gps', ({ local, gps, exiftool, nearest, ours, flags = [] }) => {
    const minutes = (Date.parse(`${local}Z`) - Date.parse(gps)) / 60_000;
    expect([quarterHours(minutes), inferLikelyOffsetMinutes(minutes, 30)]).toEqual([exiftool, nearest]);
    const readings = someReadings({ wallTime: local, gpsTime: gps.replace('Z', '.000Z') });
    const atJapanese = assertDated(decideCapture(readings, 'Asia/Tokyo'));
    expect(atJapanese).toMatchObject({ offsetMinutes: ours, flags });
    // A house far from all of these zones, so that its own zone never fits.
    const away = assertDated(decideCapture(readings, 'Pacific/Marquesas'));
    expect(away).toMatchObject({ source: 'gps-offset', offsetMinutes: nearest });
  });

  it.each(NEAREST)('%d minutes are nearest to %d', (minutes, offset) => {
    expect(nearestRealOffset(minutes).offsetMinutes).toBe(offset);
  });

  it('finds nothing within 30 minutes of 24 hours', () => {
    expect(nearestRealOffset(1440).missMinutes).toBeGreaterThan(30);
  });

  it.each(TABLE.slice(0, 7))(
    "at a Japanese house $local against GPS $gps is the house's zone",
    ({ local, gps }) => {
      const readings = someReadings({ wallTime: local, gpsTime: gps.replace('Z', '.000Z') });
      const capture = assertDated(decideCapture(readings, 'Asia/Tokyo'));
      expect(capture).toMatchObject({ source: 'house-zone-and-gps', offsetMinutes: 540, flags: [] });
    },
  );
});
