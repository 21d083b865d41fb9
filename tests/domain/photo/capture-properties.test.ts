import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { decideCapture } from '#domain/photo/capture-time';
import { REAL_OFFSETS } from '#domain/photo/real-offsets';
import { assertDated, someReadings } from '../../support/some-readings.ts';

const zones = fc.constantFrom(
  'Asia/Tokyo',
  'Asia/Kathmandu',
  'Europe/Vienna',
  'Europe/London',
  'America/New_York',
  'America/St_Johns',
  'Australia/Lord_Howe',
  'Pacific/Chatham',
  'Pacific/Kiritimati',
  'UTC',
);
const instants = fc.integer({
  min: Temporal.Instant.from('1991-01-01T00:00Z').epochMilliseconds,
  max: Temporal.Instant.from('2078-12-31T00:00Z').epochMilliseconds,
});
const gpsText = (ms: number): string =>
  Temporal.Instant.fromEpochMilliseconds(ms).toString({ smallestUnit: 'millisecond' });
const wallAt = (ms: number, offset: number): string => gpsText(ms + offset * 60_000).slice(0, -1);
const local = (ms: number, zone: string): Temporal.ZonedDateTime =>
  Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(zone);
const wallIn = (ms: number, zone: string): string => local(ms, zone).toPlainDateTime().toString();
const dayIn = (ms: number, zone: string): string => local(ms, zone).toPlainDate().toString();

describe('deciding the capture time', () => {
  it('gives the instant back from a wall time with its own offset, whatever the house and GPS say', () => {
    const gps = fc.option(instants.map(gpsText));
    fc.assert(
      fc.property(instants, fc.constantFrom(...REAL_OFFSETS), zones, gps, (ms, offset, zone, gpsTime) => {
        const readings = someReadings({ wallTime: wallAt(ms, offset), offsetMinutes: offset, gpsTime });
        const capture = assertDated(decideCapture(readings, zone));
        expect(capture.instant).toBe(gpsText(ms));
        expect(capture.day).toBe(dayIn(ms, zone));
      }),
    );
  });

  it('gives the instant back from a wall time of the house, or says that the hour has two readings', () => {
    fc.assert(
      fc.property(instants, zones, (ms, zone) => {
        const capture = assertDated(decideCapture(someReadings({ wallTime: wallIn(ms, zone) }), zone));
        if (capture.flags.length === 0) expect(capture.instant).toBe(gpsText(ms));
        else expect([capture, ...capture.rejected].map((c) => c.instant)).toContain(gpsText(ms));
        expect(capture.flags).not.toContain('skipped-hour');
      }),
    );
  });

  it('lets a GPS time within 15 minutes change neither day nor instant of a plain hour', () => {
    const drift = fc.integer({ min: -15 * 60_000, max: 15 * 60_000 });
    fc.assert(
      fc.property(instants, zones, drift, (ms, zone, lag) => {
        const wallTime = wallIn(ms, zone);
        const without = assertDated(decideCapture(someReadings({ wallTime }), zone));
        fc.pre(without.flags.length === 0);
        const capture = assertDated(
          decideCapture(someReadings({ wallTime, gpsTime: gpsText(ms + lag) }), zone),
        );
        expect(capture).toMatchObject({
          source: 'house-zone-and-gps',
          instant: without.instant,
          day: without.day,
        });
      }),
    );
  });

  it('finds a camera of another zone by a fresh GPS time', () => {
    const lag = fc.integer({ min: 3, max: 7 * 60 });
    fc.assert(
      fc.property(instants, fc.constantFrom(...REAL_OFFSETS), lag, (ms, offset, seconds) => {
        fc.pre(Math.abs(offset - 540) > 30);
        const gpsTime = gpsText(ms - seconds * 1000);
        const capture = decideCapture(someReadings({ wallTime: wallAt(ms, offset), gpsTime }), 'Asia/Tokyo');
        expect(capture).toMatchObject({ source: 'gps-offset', offsetMinutes: offset, instant: gpsText(ms) });
      }),
    );
  });

  it('keeps instant + offset = wall time, never repeats the winner among the rejected, and is repeatable', () => {
    const offsets = fc.option(fc.integer({ min: -720, max: 840 }));
    fc.assert(
      fc.property(instants, instants, offsets, zones, (wall, gps, offset, zone) => {
        const known = { wallTime: wallAt(wall, 0), gpsTime: gpsText(gps), offsetMinutes: offset };
        const capture = assertDated(decideCapture(someReadings(known), zone));
        const ms = Temporal.Instant.from(capture.instant).epochMilliseconds;
        expect(ms + capture.offsetMinutes * 60_000).toBe(wall);
        const said = capture.rejected.map((r) => [r.instant, r.offsetMinutes]);
        expect(said).not.toContainEqual([capture.instant, capture.offsetMinutes]);
        expect(decideCapture(someReadings(known), zone)).toEqual(capture);
      }),
    );
  });
});
