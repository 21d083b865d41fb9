import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cameraKey } from '#domain/photo/camera-key';
import { decideCapture } from '#domain/photo/capture-time';
import { doubtCapture } from '#domain/photo/capture-doubt';
import { datedBy, datePhoto, type DatingGrounds } from '#domain/photo/date-photo';
import { assertDated, someReadings } from '../../support/some-readings.ts';

const GROUNDS: DatingGrounds = {
  zone: 'Asia/Tokyo',
  firstDay: '2026-03-01',
  addedAt: '2026-06-01T00:00:00.000Z',
  marks: [],
  byHand: null,
};
const mark = (wallTime: string, trueTime: string, withinS = 5, offsetMinutes: number | null = null) => ({
  id: `${wallTime} ${trueTime}`,
  shown: { wallTime, offsetMinutes },
  trueTime,
  withinS,
});
/** A clock that is 37 min 12 s fast. */
const FAST = mark('2026-04-03T12:37:12', '2026-04-03T03:00:00.000Z');
const byHand = {
  taken: '2026-04-03T03:00:00.000Z',
  withinS: 3600,
  reason: 'site diary',
  by: { id: 'haru', name: 'Carpenter' },
  at: '2026-06-02T00:00:00.000Z',
};

describe('a camera with a wrong clock', () => {
  it('is put right, and what it said stays', () => {
    const readings = someReadings({ wallTime: '2026-04-03T15:37:12' });
    const capture = assertDated(datePhoto(readings, { ...GROUNDS, marks: [FAST] }));
    expect(capture).toMatchObject({
      instant: '2026-04-03T06:00:00.000Z',
      offsetMinutes: 540,
      day: '2026-04-03',
      source: 'house-zone',
      uncertaintyS: 6,
      flags: ['clock-corrected'],
      rejected: [],
      correction: { seconds: -2232, basis: 'one-mark', uncorrected: '2026-04-03T06:37:12.000Z' },
    });
    expect(datedBy(capture)).toBe('clock-mark');
  });

  it('is put right by its own offset where it writes one', () => {
    const readings = someReadings({ wallTime: '2026-04-03T07:37:12', offsetMinutes: 60 });
    const marks = [mark('2026-04-03T04:37:12', '2026-04-03T03:00:00.000Z', 5, 60)];
    expect(datePhoto(readings, { ...GROUNDS, marks })).toMatchObject({
      instant: '2026-04-03T06:00:00.000Z',
      offsetMinutes: 60,
      source: 'own-offset',
    });
  });

  it('is confirmed by satellite time, or contradicted, but not replaced', () => {
    const at = (gpsTime: string) =>
      assertDated(
        datePhoto(someReadings({ wallTime: '2026-04-03T15:37:12', gpsTime }), { ...GROUNDS, marks: [FAST] }),
      );
    const agrees = at('2026-04-03T06:00:03.000Z');
    expect([agrees.instant, agrees.source]).toEqual(['2026-04-03T06:00:00.000Z', 'house-zone-and-gps']);
    expect(agrees.flags).toEqual(['clock-corrected']);
    const rejects = at('2026-04-03T04:00:00.000Z');
    expect(rejects.instant).toBe('2026-04-03T06:00:00.000Z');
    expect(rejects.flags).toContain('gps-disagrees');
  });

  it('is believed even from its epoch, where a mark brings it home', () => {
    const marks = [mark('1980-01-01T00:10:00', '2026-04-03T03:00:00.000Z')];
    const capture = datePhoto(someReadings({ wallTime: '1980-01-01T01:10:00' }), { ...GROUNDS, marks });
    expect(capture).toMatchObject({ instant: '2026-04-03T04:00:00.000Z', flags: ['clock-corrected'] });
    expect(datePhoto(someReadings({ wallTime: '1980-01-01T01:10:00' }), GROUNDS).state).toBe('undated');
  });

  it('stays uncertain by the hour that came twice', () => {
    const marks = [mark('2026-10-25T01:30:00', '2026-10-24T23:30:10.000Z')];
    const grounds = { ...GROUNDS, zone: 'Europe/Oslo', addedAt: '2026-12-01T00:00:00.000Z', marks };
    expect(datePhoto(someReadings({ wallTime: '2026-10-25T02:30:00' }), grounds)).toMatchObject({
      instant: '2026-10-25T00:30:10.000Z',
      uncertaintyS: 3600,
      flags: ['ambiguous-hour', 'clock-corrected'],
      rejected: [{ instant: '2026-10-25T01:30:10.000Z', why: 'other-reading-of-the-hour' }],
    });
  });

  it('says where somebody set it', () => {
    const marks = [FAST, mark('2026-04-05T12:00:00', '2026-04-05T03:00:00.000Z')];
    expect(datePhoto(someReadings({ wallTime: '2026-04-03T15:37:12' }), { ...GROUNDS, marks })).toMatchObject(
      {
        flags: ['clock-corrected', 'clock-set-between-marks'],
        uncertaintyS: 2232,
      },
    );
  });

  it('is no matter to a photo without a wall time', () => {
    const readings = someReadings({ gpsTime: '2026-04-03T06:00:00.000Z' });
    expect(datePhoto(readings, { ...GROUNDS, marks: [FAST] })).toEqual(datePhoto(readings, GROUNDS));
  });
});

describe('a date said by hand', () => {
  it('dates what has none, and names who said it', () => {
    expect(datePhoto(someReadings({}), { ...GROUNDS, byHand })).toMatchObject({
      instant: byHand.taken,
      offsetMinutes: 540,
      day: '2026-04-03',
      source: 'by-hand',
      uncertaintyS: 3600,
      flags: ['dated-by-hand'],
      byHand: { by: { name: 'Carpenter' }, at: byHand.at, reason: 'site diary' },
    });
  });

  it('goes before the file, whose reading stays as not believed', () => {
    const capture = datePhoto(someReadings({ wallTime: '2027-01-01T12:00:00' }), { ...GROUNDS, byHand });
    expect(capture).toMatchObject({
      source: 'by-hand',
      rejected: [{ instant: '2027-01-01T03:00:00.000Z', source: 'house-zone', why: 'dated-by-hand' }],
    });
  });

  it('is doubted like any other time', () => {
    const early = { ...byHand, taken: '2026-02-01T03:00:00.000Z' };
    expect(datePhoto(someReadings({}), { ...GROUNDS, byHand: early })).toMatchObject({
      flags: ['dated-by-hand', 'before-first-day'],
    });
  });
});

describe('without marks and without a word', () => {
  it('a photo is dated as its file says', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: Date.UTC(2000, 0), max: Date.UTC(2030, 0) }),
        fc.constantFrom(null, 0, 60, 540, -210),
        fc.constantFrom('Asia/Tokyo', 'Europe/Oslo', 'America/St_Johns'),
        (ms, offsetMinutes, zone) => {
          const readings = someReadings({ wallTime: new Date(ms).toISOString().slice(0, 19), offsetMinutes });
          const grounds = { ...GROUNDS, zone };
          const before = structuredClone(readings);
          expect(datePhoto(readings, grounds)).toEqual(doubtCapture(decideCapture(readings, zone), grounds));
          // With a mark of another camera's reading the raw values stay, and the clock's word with them.
          const marked = assertDated(datePhoto(readings, { ...grounds, marks: [FAST] }));
          expect(readings).toEqual(before);
          const { uncorrected, seconds } = marked.correction ?? { uncorrected: '', seconds: NaN };
          expect(Date.parse(uncorrected) + marked.offsetMinutes * 60_000).toBe(Math.floor(ms / 1000) * 1000);
          expect(Date.parse(marked.instant) - Date.parse(uncorrected)).toBe(seconds * 1000);
        },
      ),
      { numRuns: 500 },
    );
  });
});

it('a camera is its make, model and serial number', () => {
  const key = (make: string | null, model: string | null, serial: string | null) =>
    cameraKey({ make, model, serial });
  expect(key(null, null, '7')).toBeNull();
  const all = [
    key('A', 'B', null),
    key('A', 'B', '1'),
    key('A', null, null),
    key(null, 'A', null),
    key('A', 'B1', null),
  ];
  expect(new Set(all).size).toBe(all.length);
});
