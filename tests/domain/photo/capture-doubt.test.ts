import { describe, expect, it } from 'vitest';
import { CaptureShape } from '#domain/contract/capture';
import type { Readings } from '#domain/contract/shapes';
import { doubtCapture, doubtOf, type DoubtBounds } from '#domain/photo/capture-doubt';
import { decideCapture } from '#domain/photo/capture-time';
import { assertDated, someReadings } from '../../support/some-readings.ts';

const ADDED = '2026-04-10T03:00:00.000Z';
const BOUNDS: DoubtBounds = { zone: 'Asia/Tokyo', firstDay: '2026-04-01', addedAt: ADDED };

const doubt = (known: Partial<Readings>, bounds: Partial<DoubtBounds> = {}) => {
  const all = { ...BOUNDS, ...bounds };
  const capture = doubtCapture(decideCapture(someReadings(known), all.zone), all);
  CaptureShape.parse(capture);
  return capture;
};
const doubtOn = (wallTime: string, bounds: Partial<DoubtBounds> = {}) => doubtOf(doubt({ wallTime }, bounds));

describe('the first day on site', () => {
  it('begins at its first instant in the zone of the house, less what the clock may be wrong', () => {
    // A camera clock in the house's zone may be five minutes off: 23:54:59 is surely the day before.
    expect(doubtOn('2026-03-31T23:54:59')).toBe('before-first-day');
    expect(doubtOn('2026-03-31T23:55:00')).toBeNull();
    expect(doubtOn('2026-04-01T00:00:00')).toBeNull();
    expect(doubtOn('2002-06-01T12:00:00')).toBe('before-first-day');
  });

  it('is the day of the house, not of the camera', () => {
    const known = { wallTime: '2026-03-31T20:00:00', offsetMinutes: 0 };
    expect(doubtOf(doubt(known))).toBeNull();
    expect(doubtOf(doubt({ ...known, wallTime: '2026-03-31T14:00:00' }))).toBe('before-first-day');
  });

  it('asks nothing where none is declared', () => {
    expect(doubtOn('2002-06-01T12:00:00', { firstDay: null })).toBeNull();
  });
});

describe('the moment at which the photo was added', () => {
  it('allows clocks a quarter of an hour, or the uncertainty of the capture time where that is more', () => {
    expect(doubtOn('2026-04-10T12:15:00')).toBeNull();
    expect(doubtOn('2026-04-10T12:15:01')).toBe('after-upload');
    expect(doubtOn('2079-01-01T00:00:00')).toBe('after-upload');
    // 01:30 came twice in New York on 1 November 2026 (IANA tzdb), so it is an hour uncertain.
    const twice = { zone: 'America/New_York', firstDay: null, addedAt: '2026-11-01T05:00:00.000Z' };
    expect(assertDated(doubt({ wallTime: '2026-11-01T01:30:00' }, twice))).toMatchObject({
      uncertaintyS: 3600,
      flags: ['ambiguous-hour'],
    });
  });

  it('speaks before the first day, which people may have set wrongly', () => {
    expect(doubtOn('2026-05-01T12:00:00', { firstDay: '2026-06-01' })).toBe('after-upload');
  });
});

it('keeps what was decided and adds one flag', () => {
  const readings = someReadings({ wallTime: '2002-06-01T12:00:00', offsetMinutes: 0 });
  const before = assertDated(decideCapture(readings, 'Asia/Tokyo'));
  expect(doubtCapture(before, BOUNDS)).toEqual({
    ...before,
    flags: ['camera-not-in-house-zone', 'before-first-day'],
  });
});

it('leaves an undated photo alone', () => {
  const capture = doubt({});
  expect([capture.state, doubtOf(capture)]).toEqual(['undated', null]);
});
