import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compassPoint } from '#domain/place/compass-point';
import { decideFence } from '#domain/place/fence';
import { fullCircle, localOf, measureLine, pointOf } from '#domain/place/geodesic';
import { middlePosition } from '#domain/place/middle-position';
import { ahead, viewCone } from '#domain/place/view-cone';

const anyPlace = fc.record({
  lat: fc.double({ min: -85, max: 85, noNaN: true }),
  lon: fc.double({ min: -180, max: 180, noNaN: true }),
});
const metres = (max: number) => fc.double({ min: 0, max, noNaN: true });

describe('the fence', () => {
  it('agrees with every point of the circle of error', () => {
    fc.assert(
      fc.property(metres(500), metres(200), fc.double({ min: 10, max: 300, noNaN: true }), (d, e, r) => {
        // Along the line through both middles lie the nearest and the farthest point; the rest between. Where
        // the middle of the site lies within the error, that is the nearest: a small site may lie between samples.
        const points = Array.from({ length: 361 }, (_, i) => {
          const turn = (i * Math.PI) / 180;
          return [1, 0.5, 0, e === 0 ? 0 : Math.min(1, d / e)].map((part) =>
            Math.hypot(d + part * e * Math.cos(turn), part * e * Math.sin(turn)),
          );
        }).flat();
        const edge = 1e-6;
        if (Math.abs(d + e - r) < edge || Math.abs(d - e - r) < edge) return;
        const inside = points.filter((p) => p <= r).length;
        const brute = inside === points.length ? 'on-site' : inside === 0 ? 'off-site' : 'cannot-tell';
        expect(decideFence(d, e, r)).toBe(brute);
      }),
      { numRuns: 500 },
    );
  });
  it('counts its edge as within', () => {
    expect([decideFence(90, 10, 100), decideFence(110, 10, 100)]).toEqual(['on-site', 'cannot-tell']);
  });
});

describe('local metres', () => {
  it('lead there and back', () => {
    const step = fc.double({ min: -5000, max: 5000, noNaN: true });
    fc.assert(
      fc.property(anyPlace, step, step, (middle, eastM, northM) => {
        const point = pointOf(middle, { eastM, northM });
        const again = localOf(middle, point);
        expect(again.eastM).toBeCloseTo(eastM, 5);
        expect(again.northM).toBeCloseTo(northM, 5);
        expect(measureLine(middle, point).distanceM).toBeCloseTo(Math.hypot(eastM, northM), 5);
      }),
    );
  });
});

describe('the cone of view', () => {
  it('opens by its angle, as long as it is said to be, about where the camera looks', () => {
    const degrees = fc.double({ min: 0, max: 360, maxExcluded: true, noNaN: true });
    const opening = fc.double({ min: 1, max: 179, noNaN: true });
    fc.assert(
      fc.property(
        degrees,
        opening,
        fc.double({ min: 1, max: 1000, noNaN: true }),
        (heading, angle, length) => {
          const from = { eastM: 3, northM: -7 };
          const { left, right } = viewCone(from, heading, angle, length);
          const bearing = (p: typeof from) =>
            fullCircle((Math.atan2(p.eastM - from.eastM, p.northM - from.northM) * 180) / Math.PI);
          for (const edge of [left, right])
            expect(Math.hypot(edge.eastM - from.eastM, edge.northM - from.northM)).toBeCloseTo(length, 6);
          expect(fullCircle(bearing(right) - bearing(left))).toBeCloseTo(angle, 6);
          const turn = fullCircle(bearing(right) - heading);
          expect(turn).toBeCloseTo(angle / 2, 6);
        },
      ),
    );
  });
  it('looks east at 90°', () => {
    const east = ahead({ eastM: 0, northM: 0 }, 90, 10);
    expect([east.eastM, east.northM]).toEqual([10, expect.closeTo(0, 9)]);
  });
});

describe('the points of the compass', () => {
  // ISO 19111 and every compass card count clockwise from north; each of the 16 points holds 22.5°.
  it.each([
    [0, 'n'],
    [11.24, 'n'],
    [11.25, 'nne'],
    [45, 'ne'],
    [90, 'e'],
    [180, 's'],
    [247.5, 'wsw'],
    [270, 'w'],
    [348.74, 'nnw'],
    [348.75, 'n'],
    [359.99, 'n'],
    [-90, 'w'],
  ])('%d° is %s', (degrees, expected) => expect(compassPoint(degrees)).toBe(expected));
});

describe('the middle of positions', () => {
  it('is moved little by one from far away', () => {
    const near = [0, 1, 2, 3].map((i) => ({ lat: 35 + i * 1e-5, lon: 135 - i * 1e-5 }));
    const middle = middlePosition([...near, { lat: 51.5, lon: -0.1 }]);
    expect(measureLine({ lat: 35.00002, lon: 134.99998 }, middle ?? near[0]!).distanceM).toBeLessThan(5);
  });
  it('does not fall apart at the antimeridian', () => {
    const middle = middlePosition([
      { lat: -17, lon: 179.9999 },
      { lat: -17, lon: -179.9999 },
    ]);
    expect(Math.abs(middle?.lon ?? 0)).toBeCloseTo(180, 6);
  });
  it('of none is none', () => expect(middlePosition([])).toBeNull());
});
