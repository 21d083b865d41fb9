import { Polygon, Segment, point } from '@flatten-js/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clipAxis, type Convex } from '#domain/frame/clip';
import type { Zone } from '#domain/frame/zone';
import { WALL_REACH_MM } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import { axisBetween, BAY, someReader } from '../support/some-grid.ts';

// Against @flatten-js/core 1.6.15 (planar geometry: segments cut by polygons at their crossings, not by half-planes),
// in elevation for walls and in plan for floors.

type XY = readonly [number, number];
const FIRST = ['い', 'ろ', 'は', 'に', 'ほ', 'へ'];
const SECOND = ['一', '二', '三', '四', '五', '六'];

/** The length of a segment inside a polygon: cut at every crossing, and each piece asked at its middle. */
function lengthInside(a: XY, b: XY, corners: readonly XY[]): number {
  const polygon = new Polygon(corners.map(([x, y]) => point(x, y)));
  const segment = new Segment(point(...a), point(...b));
  const cuts = [
    0,
    1,
    ...segment.intersect(polygon).map((p) => segment.start.distanceTo(p)[0] / segment.length),
  ];
  const sorted = cuts.sort((x, y) => x - y);
  return sorted.slice(1).reduce((sum, to, i) => {
    const from = sorted[i] ?? 0;
    const middle = (from + to) / 2;
    const at = point(a[0] + (b[0] - a[0]) * middle, a[1] + (b[1] - a[1]) * middle);
    return polygon.contains(at) ? sum + (to - from) * segment.length : sum;
  }, 0);
}

function body(zone: Zone): Convex {
  const read = zoneBody(zone, someReader);
  if (!read.ok) throw new Error(`${read.problem.reason} ${read.problem.field}`);
  return read.body;
}
const lengthOf = (stretch: { from: number; to: number } | null) => (stretch ? stretch.to - stretch.from : 0);
const index = fc.nat(5);
const coordinate = fc.integer({ min: -700, max: 9800 });
const xy = fc.tuple(coordinate, coordinate);
const apart = (a: XY, b: XY) => Math.hypot(a[0] - b[0], a[1] - b[1]) >= 2;

test('members in the plane of a wall, in elevation', () => {
  let inside = 0;
  fc.assert(
    fc.property(
      fc.constantFrom('first' as const, 'second' as const),
      index,
      fc.uniqueArray(index, { minLength: 2, maxLength: 2 }),
      fc.uniqueArray(fc.nat(8000), { minLength: 2, maxLength: 2 }),
      fc.integer({ min: -WALL_REACH_MM, max: WALL_REACH_MM }),
      xy,
      xy,
      (family, on, span, heights, aside, a, b) => {
        fc.pre(apart(a, b));
        const [own, other] = family === 'first' ? [FIRST, SECOND] : [SECOND, FIRST];
        const [left = 0, right = 0] = span;
        const [bottom, top] = [Math.min(...heights), Math.max(...heights)];
        const zone: Zone = {
          shape: 'wall',
          family,
          line: own[on] ?? '',
          from: other[left] ?? '',
          to: other[right] ?? '',
          bottom,
          top,
          face: 'both',
          over: 'over-posts',
        };
        const across = on * BAY + aside;
        const at = ([along, z]: XY) =>
          family === 'first' ? ([across, along, z] as const) : ([along, across, z] as const);
        const found = lengthOf(clipAxis(axisBetween(at(a), at(b)), body(zone)));
        const [low, high] = [Math.min(left, right) * BAY, Math.max(left, right) * BAY];
        const expected = lengthInside(a, b, [
          [low, bottom],
          [high, bottom],
          [high, top],
          [low, top],
        ]);
        if (found > 0) inside++;
        expect(Math.abs(found - expected)).toBeLessThan(0.1);
      },
    ),
    { numRuns: 1000 },
  );
  expect(inside).toBeGreaterThan(200);
});

test('members in a floor of any convex outline, in plan', () => {
  let inside = 0;
  const crossing = fc.tuple(index, index);
  fc.assert(
    fc.property(
      fc.uniqueArray(crossing, { minLength: 3, maxLength: 7, selector: String }),
      xy,
      xy,
      (some, a, b) => {
        fc.pre(apart(a, b));
        const corners = hullOf(some);
        fc.pre(corners.length >= 3);
        const zone: Zone = {
          shape: 'flat',
          corners: corners.map(([x, y]) => `${FIRST[x] ?? ''}${SECOND[y] ?? ''}`),
          bottom: 300,
          top: 450,
        };
        const found = lengthOf(clipAxis(axisBetween([...a, 400], [...b, 400]), body(zone)));
        if (found > 0) inside++;
        const outline = corners.map(([x, y]): XY => [x * BAY, y * BAY]);
        expect(Math.abs(found - lengthInside(a, b, outline))).toBeLessThan(0.1);
      },
    ),
    { numRuns: 1000 },
  );
  expect(inside).toBeGreaterThan(200);
});

/** Convex hull by gift wrapping: of each corner, the next is the one that leaves all others on one side. */
function hullOf(points: readonly XY[]): XY[] {
  const start = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1])[0] as XY;
  const hull = [start];
  for (let here = start; ;) {
    const next = points
      .filter((p) => p !== here)
      .reduce((best, p) => {
        const side = (best[0] - here[0]) * (p[1] - here[1]) - (best[1] - here[1]) * (p[0] - here[0]);
        const isFarther =
          Math.hypot(p[0] - here[0], p[1] - here[1]) > Math.hypot(best[0] - here[0], best[1] - here[1]);
        return side < 0 || (side === 0 && isFarther) ? p : best;
      });
    if (next === start || hull.includes(next)) return hull.length < 3 ? [] : hull;
    hull.push(next);
    here = next;
  }
}
