import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundingBox, outline, regionProblem, type Region, type UnitPoint } from '#domain/photo/region';

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const rectangle = (x: number, y: number, w: number, h: number): Region => ({
  shape: 'rectangle',
  x,
  y,
  w,
  h,
});
const polygon = (...points: UnitPoint[]): Region => ({ shape: 'polygon', points });

describe('regions', () => {
  it.each<[string, Region, ReturnType<typeof regionProblem>]>([
    ['the whole image', rectangle(0, 0, 1, 1), null],
    ['rounding noise at the edge', rectangle(0.7, 0.1, 0.30000000000000004, 0.2), null],
    ['past the right edge', rectangle(0.9, 0, 0.2, 0.1), 'outside-image'],
    ['past the top', polygon([0, -0.01], [1, 0], [1, 1]), 'outside-image'],
    ['no width', rectangle(0.2, 0.2, 0, 0.1), 'no-area'],
    ['drawn to the left', rectangle(0.2, 0.2, -0.1, 0.1), 'no-area'],
    ['two points', polygon([0, 0], [1, 1]), 'too-few-points'],
    ['on one line', polygon([0, 0], [0.5, 0.5], [1, 1]), 'no-area'],
    ['there and back on one line', polygon([0, 0], [1, 1], [0.2, 0.2], [0.9, 0.9]), 'no-area'],
    ['all points the same', polygon([0.3, 0.3], [0.3, 0.3], [0.3, 0.3]), 'no-area'],
    [
      'a bow tie encloses something although its signed area is 0',
      polygon([0, 0], [1, 1], [1, 0], [0, 1]),
      null,
    ],
    [
      '201 points',
      polygon(...Array.from({ length: 201 }, (_, i): UnitPoint => [i / 201, (i % 2) / 2])),
      'too-many-points',
    ],
    ['not a number', rectangle(Number.NaN, 0, 0.1, 0.1), 'not-a-number'],
    ['infinite', polygon([0, 0], [Infinity, 0], [1, 1]), 'not-a-number'],
  ])('%s', (_, region, problem) => {
    expect(regionProblem(region)).toBe(problem);
  });

  it('of any good region, the box holds every point of the outline and stays in the image', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(unit, unit), { minLength: 3, maxLength: 12 }), (points) => {
        const region: Region = { shape: 'polygon', points };
        fc.pre(regionProblem(region) === null);
        const { x, y, w, h } = boundingBox(region);
        for (const [px, py] of outline(region)) {
          expect(px).toBeGreaterThanOrEqual(x - 1e-9);
          expect(py).toBeGreaterThanOrEqual(y - 1e-9);
          expect(px).toBeLessThanOrEqual(x + w + 1e-9);
          expect(py).toBeLessThanOrEqual(y + h + 1e-9);
        }
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
        expect(Math.max(x + w, y + h)).toBeLessThanOrEqual(1 + 1e-9);
      }),
    );
  });
});
