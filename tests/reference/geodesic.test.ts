import geographic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { followLine, measureLine } from '#domain/place/geodesic';

const dms = (degrees: number, minutes: number, seconds: number) =>
  (degrees < 0 ? -1 : 1) * (Math.abs(degrees) + minutes / 60 + seconds / 3600);

type Point = readonly [lat: number, lon: number];
const measure = ([lat, lon]: Point, to: Point) => measureLine({ lat, lon }, { lat: to[0], lon: to[1] });

describe('a line on the ellipsoid', () => {
  // Sources: GeographicLib's own test_geodesic.py and GeodSolve tests (MIT; Karney), figures of well-known lines
  // in the tests of a library of Vincenty's formulae (chrisveness/geodesy, MIT; GA's Flinders Peak – Buninyong).
  it.each<[string, Point, Point, number, number | null, number]>([
    [
      'Flinders Peak to Buninyong, Geoscience Australia',
      [-dms(37, 57, 3.7203), dms(144, 25, 29.5244)],
      [-dms(37, 39, 10.1561), dms(143, 55, 35.3839)],
      ...([54972.271, 306.8681592, 1e-3] as const),
    ],
    ['GeodSolve0', [40.6, -73.8], [49.01666667, 2.55], 5853226, 53.47022, 0.5],
    [
      'Wellington to Salamanca, GeographicLib',
      [-41.32, 174.81],
      [40.96, -5.5],
      19959679.267,
      161.06767,
      1e-3,
    ],
    [
      'test_geodesic.py, case 1',
      [35.60777, -139.44815],
      [-11.17491, -69.95921],
      ...([8935244.56048183, 111.09874842956, 1e-7] as const),
    ],
    [
      'test_geodesic.py, across the Pacific',
      [-19.79938, -174.47484],
      [-11.99349, -154.35109],
      ...([2319004.860116939, 71.167275780172, 1e-7] as const),
    ],
    [
      'test_geodesic.py, through Timor',
      [-41.22777, 122.32875],
      [-7.57291, 130.37946],
      ...([3812686.035106021, 14.285113402275739, 1e-7] as const),
    ],
    ['a degree of the equator', [0, 0], [0, 1], 111319.491, 90, 1e-3],
    ['over the antimeridian', [30, 120], [30, -120], 10825924.089, null, 1e-3],
    ['a metre and a half', [0, 0], [0.00001, 0.00001], 1.569, null, 5e-4],
    ['GeodSolve4', [36.493349428792, 0], [36.49334942879201, 0.0000008], 0.072, null, 5e-4],
    ['nearly antipodal', [0, 0], [0.5, 179.5], 19936288.579, null, 1e-3],
  ])('%s', (_name, from, to, metres, azimuth, within) => {
    const line = measure(from, to);
    expect(Math.abs(line.distanceM - metres)).toBeLessThanOrEqual(within);
    if (azimuth !== null) expect(line.azimuth).toBeCloseTo(azimuth, 5);
  });

  // 0.5°, 179.7°: Vincenty's iteration does not converge there; Karney's method gives both directions alike.
  it('is found where Vincenty finds none', () => {
    const there = measure([0, 0], [0.5, 179.7]).distanceM;
    expect(there).toBeGreaterThan(19_900_000);
    expect(there).toBeLessThan(20_003_931.5);
    expect(measure([0.5, 179.7], [0, 0]).distanceM).toBeCloseTo(there, 6);
  });

  it('of two points in one place has no length', () => {
    expect(measure([35, 135], [35, 135])).toEqual({ distanceM: 0, azimuth: 0 });
  });

  // GeographicLib (Python) at Kyoto: 0.0001° is 11.094 m north, 9.128 m east.
  it('is right where a site is small', () => {
    const north = measure([35.0116, 135.7681], [35.0117, 135.7681]);
    const east = measure([35.0116, 135.7681], [35.0116, 135.7682]);
    expect([north.distanceM, north.azimuth]).toEqual([expect.closeTo(11.094, 3), 0]);
    expect([east.distanceM, east.azimuth]).toEqual([expect.closeTo(9.128, 3), expect.closeTo(90, 3)]);
  });

  it('ends where it is followed to', () => {
    const from = { lat: 35.0116, lon: 179.999 };
    const to = followLine(from, { distanceM: 5000, azimuth: 80 });
    expect(to.lon).toBeLessThan(-179.9);
    expect(measureLine(from, to)).toEqual({
      distanceM: expect.closeTo(5000, 6),
      azimuth: expect.closeTo(80, 9),
    });
  });
});

// T. Vincenty, Survey Review XXIII (176), 1975, table II: his ellipsoids, not ours, so the library is asked itself.
describe("Vincenty's table II", () => {
  const BESSEL = [6377397.155, 1 / 299.15281285] as const;
  const INTERNATIONAL = [6378388, 1 / 297] as const;
  it.each([
    ['a', BESSEL, dms(55, 45, 0), -dms(33, 26, 0), dms(108, 13, 0), 14110526.17, dms(96, 36, 8.7996)],
    [
      ...(['b', INTERNATIONAL, dms(37, 19, 54.95367), dms(26, 7, 42.83946), dms(41, 28, 35.50729)] as const),
      ...([4085966.703, dms(95, 27, 59.63089)] as const),
    ],
    [
      ...([
        'c',
        INTERNATIONAL,
        dms(35, 16, 11.24862),
        dms(67, 22, 14.77638),
        dms(137, 47, 28.31435),
      ] as const),
      ...([8084823.839, dms(15, 44, 23.7485)] as const),
    ],
    ['d', INTERNATIONAL, 1, -dms(0, 59, 53.83076), dms(179, 17, 48.02997), 19960000, 89],
    [
      ...(['e', INTERNATIONAL, 1, dms(1, 1, 15.18952), dms(179, 46, 17.84244)] as const),
      ...([19780006.558, dms(4, 59, 59.99995)] as const),
    ],
  ])('(%s)', (_name, [a, f], lat1, lat2, lon, metres, azimuth) => {
    const ellipsoid = new geographic.Geodesic.Geodesic(a, f);
    const { s12, azi1 } = ellipsoid.Inverse(lat1, 0, lat2, lon);
    // His figures are rounded: 1 mm; where points are nearly opposite, 0.001″ and more for the azimuth.
    expect(Math.abs((s12 ?? 0) - metres)).toBeLessThanOrEqual(1.5e-3);
    expect(azi1).toBeCloseTo(azimuth, 5);
  });
});
