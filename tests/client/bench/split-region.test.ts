import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outline, regionProblem, type Region, type UnitPoint } from '#domain/photo/region';
import { halve, splitAlong } from '../../../client/screens/bench/split-region.ts';

/** Shoelace formula, of outlines that do not cross themselves. */
function area(region: Region): number {
  const points = outline(region);
  const twice = points.reduce((sum, [x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length] as UnitPoint;
    return sum + x * ny - nx * y;
  }, 0);
  return Math.abs(twice) / 2;
}

/** Thousandths, evenly spread: doubles would mostly be tiny. */
const unit = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);
const point = fc.tuple(unit, unit);
const side = fc.integer({ min: 50, max: 1000 }).map((n) => n / 1000);
const box = fc
  .tuple(point, side, side)
  .map(([[x, y], w, h]): Region => ({ shape: 'rectangle', x: x * (1 - w), y: y * (1 - h), w, h }));
/** Corners on an ellipse, in the order of their angle: never concave, never crossing itself. */
const convex = fc
  .uniqueArray(fc.integer({ min: 0, max: 359 }), { minLength: 3, maxLength: 12 })
  .map((angles): Region => ({
    shape: 'polygon',
    points: angles
      .sort((a, b) => a - b)
      .map((angle) => {
        const radians = (angle * Math.PI) / 180;
        return [0.5 + 0.45 * Math.cos(radians), 0.5 + 0.4 * Math.sin(radians)];
      }),
  }));

describe('splitting a region', () => {
  it('makes two sound pieces that together are the whole', () => {
    let splits = 0;
    fc.assert(
      fc.property(fc.oneof(box, convex), point, point, (region, a, b) => {
        const pieces = splitAlong(region, [a, b]);
        if (!pieces) return;
        splits += 1;
        for (const piece of pieces) expect(regionProblem(piece)).toBeNull();
        expect(area(pieces[0]) + area(pieces[1])).toBeCloseTo(area(region), 9);
      }),
      { numRuns: 1000 },
    );
    expect(splits).toBeGreaterThan(300);
  });

  const post: Region = { shape: 'rectangle', x: 0.2, y: 0.1, w: 0.4, h: 0.8 };
  it('cuts a box into boxes by a line that a hand draws about upright or level', () => {
    expect(
      splitAlong(post, [
        [0.39, 0],
        [0.41, 1],
      ]),
    ).toEqual([
      { shape: 'rectangle', x: 0.2, y: 0.1, w: expect.closeTo(0.2) as number, h: 0.8 },
      {
        shape: 'rectangle',
        x: expect.closeTo(0.4) as number,
        y: 0.1,
        w: expect.closeTo(0.2) as number,
        h: 0.8,
      },
    ]);
    expect(
      splitAlong(post, [
        [0, 0.5],
        [1, 0.52],
      ])?.map(({ shape }) => shape),
    ).toEqual(['rectangle', 'rectangle']);
  });
  it('cuts a box into outlines by a slanting line', () => {
    expect(
      splitAlong(post, [
        [0.2, 0.1],
        [0.6, 0.9],
      ])?.map(({ shape }) => shape),
    ).toEqual(['polygon', 'polygon']);
  });
  it('the left or upper piece comes first, whichever way the line is drawn', () => {
    for (const line of [
      [
        [0.1, 0.3],
        [0.9, 0.7],
      ],
      [
        [0.9, 0.7],
        [0.1, 0.3],
      ],
    ] as const) {
      const [first, other] = splitAlong(post, line) ?? [];
      expect(first && Math.min(...outline(first).map(([, y]) => y))).toBeCloseTo(0.1);
      expect(other && Math.max(...outline(other).map(([, y]) => y))).toBeCloseTo(0.9);
    }
  });
  it.each([
    [
      'a line beside it',
      [
        [0.1, 0],
        [0.1, 1],
      ],
    ],
    [
      'a line that would only go through if it were longer',
      [
        [0.7, 0.5],
        [0.9, 0.5],
      ],
    ],
    [
      'a point',
      [
        [0.4, 0.4],
        [0.4, 0.4],
      ],
    ],
    [
      'a sliver',
      [
        [0.2001, 0],
        [0.2001, 1],
      ],
    ],
  ] as const)('leaves it whole: %s', (_, [a, b]) => expect(splitAlong(post, [a, b])).toBeNull());
  it('leaves whole what would fall into more than two', () => {
    const fork: Region = {
      shape: 'polygon',
      points: [
        [0.1, 0.1],
        [0.3, 0.1],
        [0.3, 0.5],
        [0.6, 0.5],
        [0.6, 0.1],
        [0.8, 0.1],
        [0.8, 0.9],
        [0.1, 0.9],
      ],
    };
    expect(
      splitAlong(fork, [
        [0, 0.3],
        [1, 0.3],
      ]),
    ).toBeNull();
    expect(
      splitAlong(fork, [
        [0, 0.7],
        [1, 0.7],
      ]),
    ).not.toBeNull();
  });
  it('halves across the longer side as it looks, not as it counts', () => {
    expect(halve(post, 0.75)?.[0]).toMatchObject({ w: 0.4, h: expect.closeTo(0.4) as number });
    expect(halve(post, 0.25)?.[0]).toMatchObject({ w: expect.closeTo(0.2) as number, h: 0.8 });
  });
});
