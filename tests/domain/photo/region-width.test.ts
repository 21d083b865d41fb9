import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { acrossPx, convexHull, minimumWidth, type PixelPoint } from '#domain/photo/region-width';

const point = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }));
const outlines = fc.array(point, { minLength: 3, maxLength: 12 });

/** Looks from every direction of a fine fan; never less than the true width, and hardly more. */
function widthFromAllSides(points: readonly PixelPoint[], steps = 7200): number {
  let least = Infinity;
  for (let i = 0; i < steps; i += 1) {
    const angle = (i / steps) * Math.PI;
    const along = points.map(([x, y]) => x * Math.cos(angle) + y * Math.sin(angle));
    least = Math.min(least, Math.max(...along) - Math.min(...along));
  }
  return least;
}

describe('the narrow side of a region', () => {
  it('is the shorter side of a box, in pixels', () =>
    expect(
      acrossPx({ shape: 'rectangle', x: 0.1, y: 0.1, w: 0.5, h: 0.1 }, { width: 4000, height: 3000 }),
    ).toBeCloseTo(300, 9));

  it('of a thin slanting outline is its thickness, not that of its box', () =>
    expect(
      minimumWidth([
        [0, 0],
        [1000, 1000],
        [1000 - 10 * Math.SQRT1_2, 1000 + 10 * Math.SQRT1_2],
        [-10 * Math.SQRT1_2, 10 * Math.SQRT1_2],
      ]),
    ).toBeCloseTo(10, 9));

  // A triangle is narrowest across its longest side: 2 · area / side.
  it('of a 3-4-5 triangle is 2.4', () =>
    expect(
      minimumWidth([
        [0, 0],
        [4, 0],
        [0, 3],
      ]),
    ).toBeCloseTo(2.4, 12));

  it('is nothing for points on one line, and for one point', () => {
    expect(
      minimumWidth([
        [0, 0],
        [5, 5],
        [9, 9],
      ]),
    ).toBe(0);
    expect(
      minimumWidth([
        [3, 3],
        [3, 3],
        [3, 3],
      ]),
    ).toBe(0);
  });

  it('is the least that is seen from any side', () =>
    fc.assert(
      fc.property(outlines, (points) => {
        const seen = widthFromAllSides(points);
        const width = minimumWidth(points);
        expect(width).toBeLessThanOrEqual(seen + 1e-9);
        // Half a step of the fan at the far end of the largest outline.
        expect(seen - width).toBeLessThanOrEqual(570 * (Math.PI / 7200));
      }),
      { numRuns: 60 },
    ));

  it('does not change when the outline is turned and moved', () =>
    fc.assert(
      fc.property(outlines, fc.double({ min: 0, max: 6.3, noNaN: true }), point, (points, turn, [dx, dy]) => {
        const turned = points.map(([x, y]): PixelPoint => [
          x * Math.cos(turn) - y * Math.sin(turn) + dx,
          x * Math.sin(turn) + y * Math.cos(turn) + dy,
        ]);
        expect(minimumWidth(turned)).toBeCloseTo(minimumWidth(points), 6);
      }),
    ));

  it('has every point inside its hull', () =>
    fc.assert(
      fc.property(outlines, (points) => {
        const hull = convexHull(points);
        for (const [x, y] of points)
          hull.forEach(([ax, ay], i) => {
            const [bx, by] = hull[(i + 1) % hull.length] ?? [ax, ay];
            expect((bx - ax) * (y - ay) - (by - ay) * (x - ax)).toBeGreaterThanOrEqual(0);
          });
      }),
    ));
});
