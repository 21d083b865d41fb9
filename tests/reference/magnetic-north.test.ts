import { describe, expect, it } from 'vitest';
import { turnHeading } from '#domain/place/heading';
import { declinationAt } from '#domain/place/magnetic-north';

const KYOTO = { lat: 35.0116, lon: 135.7681 };

// WMM2025 test values as published with the model (NOAA NCEI): decimal year, km, latitude, longitude, D.
describe('declination by the World Magnetic Model', () => {
  it.each([
    [2025.0, 0, 80, 0, 1.28],
    [2025.0, 0, 0, 120, -0.16],
    [2025.0, 0, -80, 240, 68.78],
    [2025.0, 100, 80, 0, 0.85],
    [2027.5, 0, 80, 0, 2.59],
    [2027.5, 0, 0, 120, -0.24],
    [2027.5, 0, -80, 240, 68.49],
    [2027.5, 100, -80, 240, 67.93],
    [2025.0, 65, 43, 93, 0.5],
    [2025.0, 51, -33, 109, -5.49],
  ])('%f, %f km, %f°, %f°: %f°', (year, km, lat, lon, expected) => {
    expect(declinationAt({ lat, lon }, km * 1000, inYear(year))?.degrees).toBeCloseTo(expected, 2);
  });

  // NOAA's calculator, 2026-09-05: −5.057° ± 0.30° at 25.03 N, 121.56 E.
  it('and its uncertainty agree with NOAA at Taipei', () => {
    const found = declinationAt({ lat: 25.03, lon: 121.56 }, 0, inYear(2026.6768));
    expect(found?.degrees).toBeCloseTo(-5.057, 3);
    expect(found?.uncertainty).toBeCloseTo(0.3, 2);
  });

  // GSI's tables of Japan (gsi.go.jp) count westwards: 8.2 there is −8.2 here.
  it('is negative all over Japan', () => {
    for (const [lat, lon] of [
      [43.06, 141.35],
      [35.68, 139.77],
      [26.21, 127.68],
    ] as const)
      expect(declinationAt({ lat, lon }, 0, inYear(2026))?.degrees).toBeLessThan(-5);
  });

  it('is not known beyond the editions, nor at a magnetic pole', () => {
    for (const instant of [
      '2001-07-11T02:18:07.000Z',
      '2014-12-01T00:00:00.000Z',
      '2031-01-01T00:00:00.000Z',
    ])
      expect(declinationAt(KYOTO, 0, instant)).toBeNull();
    // The dip pole of 2025: 85.8° N, 139.3° E (from memory).
    expect(declinationAt({ lat: 85.8, lon: 139.3 }, 0, inYear(2025.5))).toBeNull();
  });
});

describe('a heading', () => {
  const AT = { ...KYOTO, altitudeM: null };
  const magnetic = { degrees: 351.5, reference: 'magnetic' as const };

  // Computed from −8.203° at Kyoto, 2026.0: GPSImgDirection 351.5 M looks to 343.297° true.
  it('is turned true where the photo was taken', () => {
    const turned = turnHeading(magnetic, AT, null, inYear(2026));
    expect(turned.trueDegrees).toBeCloseTo(343.297, 2);
    expect(turned).toMatchObject({ stated: 351.5, reference: 'magnetic', flags: [] });
    expect(turned.declination).toBeCloseTo(-8.203, 3);
    expect(turned.declinationUncertainty).toBeGreaterThan(0.3);
    expect(turned.declinationUncertainty).toBeLessThan(0.33);
  });
  it('is turned over north', () => {
    const over = turnHeading({ degrees: 3, reference: 'magnetic' }, AT, null, inYear(2026));
    expect(over.trueDegrees).toBeCloseTo(354.797, 2);
  });
  it('is turned at the site for want of a position', () => {
    const turned = turnHeading(magnetic, null, KYOTO, inYear(2026));
    expect(turned).toMatchObject({ flags: ['turned-at-site'], trueDegrees: expect.closeTo(343.297, 2) });
  });
  it.each([
    ['true', { degrees: 360, reference: 'true' as const }, AT, 2026, 0, []],
    ['unstated', { degrees: 12, reference: 'unstated' as const }, AT, 2026, 12, ['north-not-stated']],
    ['nowhere', magnetic, null, 2026, 351.5, ['no-place-to-turn-at']],
    ['long ago', magnetic, AT, 2001, 351.5, ['no-magnetic-model']],
  ])('stays as it is: %s', (_name, stated, at, year, trueDegrees, flags) => {
    expect(turnHeading(stated, at, null, inYear(year))).toEqual({
      ...{ trueDegrees, stated: stated.degrees, reference: stated.reference, flags },
      ...{ declination: null, declinationUncertainty: null },
    });
  });
});

/** A decimal year of 365 days, as the model's own test values count; of 366 it is less than 0.001° off. */
function inYear(year: number): string {
  const whole = Math.floor(year);
  return new Date(Date.UTC(whole) + (year - whole) * 365 * 86_400_000).toISOString();
}
