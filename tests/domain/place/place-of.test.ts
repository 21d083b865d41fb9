import { describe, expect, it } from 'vitest';
import { ReadPlaceShape } from '#domain/contract/place';
import { followLine } from '#domain/place/geodesic';
import { placeOf } from '#domain/place/place-of';
import { someReadings } from '../../support/some-readings.ts';

const SITE = { lat: 35.0116, lon: 135.7681, radiusM: 100 };
const SIZE = { width: 4032, height: 3024 };
const NOW = '2026-04-01T00:30:05.000Z';
const at = (distanceM: number, errorM: number | null, complaints: string[] = []) =>
  someReadings({
    position: { ...followLine(SITE, { distanceM, azimuth: 45 }), errorM, altitudeM: null },
    complaints,
  });
const verdict = (...args: Parameters<typeof at>) => placeOf(at(...args), SIZE, SITE, NOW).site?.verdict;

describe('where a photo was taken', () => {
  it('says all of it', () => {
    const readings = {
      ...at(62, 5),
      heading: { degrees: 240, reference: 'true' as const },
      focalLength35Mm: 26,
    };
    const place = placeOf(readings, SIZE, SITE, NOW);
    expect(ReadPlaceShape.parse(place)).toEqual(place);
    expect(place).toMatchObject({
      position: { errorM: 5, errorStated: true, datum: 'wgs-84' },
      heading: { trueDegrees: 240 },
      fieldOfView: { horizontal: expect.closeTo(67.2987, 3) },
      site: { distanceM: expect.closeTo(62, 6), azimuth: expect.closeTo(45, 6), verdict: 'on-site' },
    });
  });
  it('is nothing without readings', () => {
    expect(placeOf(someReadings({}), SIZE, SITE, NOW)).toEqual({
      ...{ position: null, heading: null, fieldOfView: null, site: null },
    });
  });
  it('is told without a verdict for a house without a site', () => {
    const place = placeOf(at(10, 5), SIZE, null, NOW);
    expect([place.position?.errorM, place.site]).toEqual([5, null]);
  });

  it.each([
    ['well within', 62, 5, 'on-site'],
    ['its circle touches the edge from within', 90, 9.999, 'on-site'],
    ['its circle crosses the edge', 90, 10.001, 'cannot-tell'],
    ['outside, but the circle reaches in', 120, 20.001, 'cannot-tell'],
    ['outside by more than the error', 120, 19.999, 'off-site'],
    ['another town', 40_000, 65, 'off-site'],
    ['an error of 2000 km says nothing', 40_000, 2_000_000, 'cannot-tell'],
    ['no error stated: 10 m', 95, null, 'cannot-tell'],
    ['no error stated, well within', 80, null, 'on-site'],
    ['an error of 0 is no error', 95, 0, 'cannot-tell'],
  ])('%s: %d m ± %s m', (_name, metres, error, expected) => {
    expect(verdict(metres, error)).toBe(expected);
  });

  it('marks an assumed error as such', () => {
    for (const error of [null, 0])
      expect(placeOf(at(5, error), SIZE, SITE, NOW).position).toMatchObject({
        errorM: 10,
        errorStated: false,
      });
  });

  // The old Japanese datum lies about 400 to 450 m beside WGS-84 in Honshu (from memory).
  it.each([
    [0, 'cannot-tell'],
    [500, 'cannot-tell'],
    [600, 'off-site'],
  ])('on the Tokyo datum, at %d m, is %s', (metres, expected) => {
    expect(verdict(metres, 5, ['datum-tokyo'])).toBe(expected);
  });

  it('turns the heading at the site for want of a position', () => {
    const readings = someReadings({ heading: { degrees: 90, reference: 'magnetic' } });
    expect(placeOf(readings, SIZE, SITE, NOW).heading?.flags).toEqual(['turned-at-site']);
  });
});
