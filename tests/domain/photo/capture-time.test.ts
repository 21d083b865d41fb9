import { describe, expect, it } from 'vitest';
import { CaptureShape } from '#domain/contract/capture';
import type { Readings } from '#domain/contract/shapes';
import { decideCapture } from '#domain/photo/capture-time';
import { assertDated, someReadings } from '../../support/some-readings.ts';

const decide = (known: Partial<Readings>, zone = 'Asia/Tokyo') => {
  const capture = decideCapture(someReadings(known), zone);
  CaptureShape.parse(capture);
  return capture;
};
const date = (known: Partial<Readings>, zone = 'Asia/Tokyo') => assertDated(decide(known, zone));

describe('rule 1: the camera wrote its own offset', () => {
  it('takes wall time and offset', () => {
    const capture = date({ wallTime: '2026-04-01T09:30:00.25', offsetMinutes: 540 });
    expect(capture).toMatchObject({ instant: '2026-04-01T00:30:00.250Z', source: 'own-offset', flags: [] });
    expect(capture).toMatchObject({ day: '2026-04-01', offsetMinutes: 540, uncertaintyS: 60, rejected: [] });
  });

  it('takes +00:00 as an answer', () => {
    const capture = date({ wallTime: '2026-04-01T09:30:00', offsetMinutes: 0 }, 'Atlantic/Reykjavik');
    expect(capture).toMatchObject({ instant: '2026-04-01T09:30:00.000Z', source: 'own-offset', flags: [] });
  });

  it('is narrowed by a GPS time that agrees', () => {
    const gpsTime = '2026-04-01T00:29:50.000Z';
    const capture = date({ wallTime: '2026-04-01T09:30:00', offsetMinutes: 540, gpsTime });
    expect(capture).toMatchObject({ source: 'own-offset', uncertaintyS: 10, flags: [] });
    expect(capture.rejected).toEqual([
      { source: 'gps-only', instant: gpsTime, offsetMinutes: 540, why: 'a-better-source-exists' },
    ]);
  });

  it('says where the camera kept another zone than the house, and gives the day of the house', () => {
    const capture = date({ wallTime: '2026-04-01T20:00:00', offsetMinutes: 0 });
    expect(capture).toMatchObject({ day: '2026-04-02', flags: ['camera-not-in-house-zone'] });
    expect(capture.rejected).toEqual([
      {
        source: 'house-zone',
        instant: '2026-04-01T11:00:00.000Z',
        offsetMinutes: 540,
        why: 'a-better-source-exists',
      },
    ]);
  });

  it('stays when GPS disagrees, and says so', () => {
    const known = {
      wallTime: '2026-04-01T09:30:15',
      offsetMinutes: 540,
      gpsTime: '2026-03-31T21:30:15.000Z',
    };
    expect(date(known)).toMatchObject({ source: 'own-offset', flags: ['gps-disagrees'], uncertaintyS: 60 });
  });

  it('settles an ambiguous hour', () => {
    const winter = date({ wallTime: '2024-10-27T02:30:00', offsetMinutes: 60 }, 'Europe/Vienna');
    expect(winter).toMatchObject({ instant: '2024-10-27T01:30:00.000Z', flags: [] });
  });
});

describe("rule 2: the house's zone, confirmed by GPS", () => {
  const wallTime = '2026-04-01T09:30:00';

  it.each([
    ['2026-04-01T00:15:00.000Z', 'house-zone-and-gps'],
    ['2026-04-01T00:45:00.000Z', 'house-zone-and-gps'],
    ['2026-04-01T00:14:59.000Z', 'house-zone'],
  ])('GPS at %s: %s (15 minutes are in, 15:01 are not)', (gpsTime, source) => {
    expect(date({ wallTime, gpsTime })).toMatchObject({ source, instant: '2026-04-01T00:30:00.000Z' });
  });

  it('lets GPS tell the two readings of an ambiguous hour apart', () => {
    const known = { wallTime: '2024-10-27T02:30:00', gpsTime: '2024-10-27T01:29:30.000Z' };
    const capture = date(known, 'Europe/Vienna');
    expect(capture).toMatchObject({ instant: '2024-10-27T01:30:00.000Z', offsetMinutes: 60, flags: [] });
    expect(capture.source).toBe('house-zone-and-gps');
    expect(capture.rejected).toContainEqual({
      source: 'house-zone',
      instant: '2024-10-27T00:30:00.000Z',
      offsetMinutes: 120,
      why: 'disagrees-with-gps',
    });
  });

  it('else takes the nearest real offset and flags the camera', () => {
    const capture = date({ wallTime, gpsTime: '2026-04-01T13:29:00.000Z' });
    expect(capture).toMatchObject({ source: 'gps-offset', offsetMinutes: -240, uncertaintyS: 60 });
    expect(capture.flags).toEqual(['camera-not-in-house-zone']);
    expect(capture.rejected.map((r) => [r.source, r.why])).toEqual([
      ['house-zone', 'disagrees-with-gps'],
      ['gps-only', 'a-better-source-exists'],
    ]);
  });

  it('keeps the house zone at 556 minutes, where a free guess would say +09:30', () => {
    const capture = date({ wallTime, gpsTime: '2026-04-01T00:14:00.000Z' });
    expect(capture).toMatchObject({ source: 'house-zone', offsetMinutes: 540, flags: ['gps-stale'] });
    expect(capture.rejected).toContainEqual({
      source: 'gps-offset',
      instant: '2026-04-01T00:00:00.000Z',
      offsetMinutes: 570,
      why: 'house-zone-preferred',
    });
    expect(capture.uncertaintyS).toBe(1800);
  });

  it('still finds the neighbouring zone with a fresh fix', () => {
    const capture = date({ wallTime, gpsTime: '2026-04-01T00:00:00.000Z' });
    expect(capture).toMatchObject({ source: 'gps-offset', offsetMinutes: 570 });
  });

  it('is not fooled by a GPS time that repeats the local time', () => {
    const capture = date({ wallTime, gpsTime: '2026-04-01T09:30:00.000Z' });
    expect(capture).toMatchObject({ source: 'house-zone', instant: '2026-04-01T00:30:00.000Z' });
    expect(capture).toMatchObject({ flags: ['gps-not-utc'], uncertaintyS: 9 * 3600 });
    expect(capture.rejected.map((r) => [r.source, r.offsetMinutes, r.why])).toEqual([
      ['gps-offset', 0, 'gps-not-utc'],
      ['gps-only', 540, 'gps-not-utc'],
    ]);
  });

  it('is not fooled in summer where the house keeps UTC in winter', () => {
    const summer = { wallTime: '2026-07-01T09:30:00', gpsTime: '2026-07-01T09:30:00.000Z' };
    const winter = { wallTime: '2026-01-07T09:30:00', gpsTime: '2026-01-07T09:30:00.000Z' };
    expect(date(summer, 'Europe/London')).toMatchObject({ offsetMinutes: 60, flags: ['gps-not-utc'] });
    expect(date(winter, 'Europe/London')).toMatchObject({ source: 'house-zone-and-gps', flags: [] });
  });

  it.each([
    ['2026-03-30T22:30:00.000Z', 'gps-stale'],
    // 14 h 40 min: 40 minutes past the furthest offset, +14:00.
    ['2026-03-31T18:50:00.000Z', 'gps-stale'],
    ['2026-04-03T09:30:00.000Z', 'gps-disagrees'],
    ['2006-08-15T09:30:00.000Z', 'gps-disagrees'],
  ])('falls to the house zone where no offset fits: GPS %s is %s', (gpsTime, flag) => {
    const capture = date({ wallTime, gpsTime });
    expect(capture).toMatchObject({ source: 'house-zone', flags: [flag] });
    expect(capture.rejected.map((r) => r.why)).toEqual(['no-such-offset', 'a-better-source-exists']);
  });
});

describe("rule 3: the house's zone alone", () => {
  it('follows daylight saving time', () => {
    expect(date({ wallTime: '2026-07-01T09:30:00' }, 'Europe/Vienna')).toMatchObject({ offsetMinutes: 120 });
    expect(date({ wallTime: '2026-01-07T09:30:00' }, 'Europe/Vienna')).toMatchObject({ offsetMinutes: 60 });
  });

  it('flags an ambiguous hour, takes its first reading (RFC 5545 §3.3.5) and keeps the other', () => {
    const capture = date({ wallTime: '2024-10-27T02:30:00' }, 'Europe/Vienna');
    expect(capture).toMatchObject({ instant: '2024-10-27T00:30:00.000Z', flags: ['ambiguous-hour'] });
    expect(capture.uncertaintyS).toBe(3600);
    expect(capture.rejected).toEqual([
      {
        source: 'house-zone',
        instant: '2024-10-27T01:30:00.000Z',
        offsetMinutes: 60,
        why: 'other-reading-of-the-hour',
      },
    ]);
  });

  it('flags a skipped hour and reads it by the clock that was not yet moved (RFC 5545 §3.3.5)', () => {
    const capture = date({ wallTime: '2024-03-31T02:30:00' }, 'Europe/Vienna');
    expect(capture).toMatchObject({ instant: '2024-03-31T01:30:00.000Z', offsetMinutes: 60 });
    expect(capture).toMatchObject({ flags: ['skipped-hour'], uncertaintyS: 3600 });
  });

  it.each(['2024-10-27T01:59:59', '2024-10-27T03:00:00', '2024-03-31T01:59:59', '2024-03-31T03:00:00'])(
    'flags nothing at %s, beside the change',
    (wallTime) => {
      expect(date({ wallTime }, 'Europe/Vienna').flags).toEqual([]);
    },
  );

  it('says that a GPS time without a usable date could not help', () => {
    const capture = date({ wallTime: '2026-04-01T09:30:00', complaints: ['gps-date-missing'] });
    expect(capture.flags).toEqual(['gps-unusable']);
  });

  it('says that the zone stands where it is not read, unless the file or the satellites tell it', () => {
    const complaints = ['offset-in-thermal-record'];
    const wallTime = '2026-04-01T09:30:00';
    expect(date({ wallTime, complaints }).flags).toEqual(['zone-not-read']);
    expect(date({ wallTime, complaints, offsetMinutes: 540 }).flags).toEqual([]);
    expect(date({ wallTime, complaints, gpsTime: '2026-04-01T00:30:00.000Z' }).flags).toEqual([]);
    // A clock mark says of the clock what it stands from the true time, zone and all.
    const marked = decideCapture(someReadings({ wallTime, complaints }), 'Asia/Tokyo', {
      ...{ deltaMs: -3_600_000, uncertaintyS: 5, basis: 'one-mark', marks: ['m'], isSetBetween: false },
    });
    expect(marked).toMatchObject({ flags: ['clock-corrected'] });
  });

  it('throws for a zone that does not exist', () => {
    expect(() => decide({ wallTime: '2026-04-01T09:30:00' }, 'Asia/Nowhere')).toThrow(RangeError);
  });
});

describe('rules 4 and 5', () => {
  it('takes GPS time alone, with the day of the house', () => {
    const capture = date({ gpsTime: '2026-04-01T20:00:00.000Z' });
    expect(capture).toMatchObject({ source: 'gps-only', day: '2026-04-02', uncertaintyS: 900 });
  });

  it.each([
    { wallTime: null },
    { wallTime: '2024-02-30T10:00:00' },
    { wallTime: '2024-13-45T99:99:99' },
    { wallTime: '0000-00-00T00:00:00' },
  ])('leaves %o undated', (known) => {
    expect(decide(known)).toEqual({ state: 'undated', rejected: [] });
  });
});

describe('implausible years', () => {
  it.each(['1601-06-06T16:39:33', '1970-01-01T00:00:00', '1989-12-31T23:59:59', '2090-01-01T00:00:00'])(
    'does not believe %s',
    (wallTime) => {
      const capture = decide({ wallTime });
      expect(capture.state).toBe('undated');
      expect(capture.rejected).toMatchObject([{ source: 'house-zone', why: 'implausible-year' }]);
    },
  );

  it.each(['1990-01-01T00:00:00', '2079-12-31T23:59:59'])('believes %s', (wallTime) => {
    expect(date({ wallTime }).flags).toEqual([]);
  });

  it('drops what cannot be written with four digits of year', () => {
    expect(decide({ wallTime: '0000-01-01T00:00:00' })).toEqual({ state: 'undated', rejected: [] });
  });

  it('falls to GPS, flagged', () => {
    const capture = date({ wallTime: '1601-06-06T16:39:33', gpsTime: '2026-04-01T00:30:00.000Z' });
    expect(capture).toMatchObject({ source: 'gps-only', flags: ['implausible-year'] });
  });

  it('does not believe an implausible GPS date either', () => {
    const known = { wallTime: '2024-01-30T12:00:00', gpsTime: '1899-12-30T01:00:14.000Z' };
    const capture = date(known);
    expect(capture).toMatchObject({ source: 'house-zone', flags: ['implausible-year'] });
    expect(capture.rejected).toMatchObject([{ source: 'gps-only', why: 'implausible-year' }]);
  });
});
