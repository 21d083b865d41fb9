import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pointOn } from '#domain/frame/axis-of';
import { clipAxis, isInside } from '#domain/frame/clip';
import type { Zone } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import { axisBetween, BAY, someReader } from '../../support/some-grid.ts';

const first = fc.constantFrom('い', 'ろ', 'は', 'に', 'ほ', 'へ', '又ろ');
const second = fc.constantFrom('一', '二', '三', '四', '五', '六', '又三');
const height = fc.integer({ min: 0, max: 8000 });
const family = fc.constantFrom('first' as const, 'second' as const);

const zone: fc.Arbitrary<Zone> = fc.oneof(
  fc
    .record({ family, one: first, two: first, three: second, four: second, bottom: height, top: height })
    .map(({ family, one, two, three, four, bottom, top }): Zone => ({
      shape: 'wall',
      family,
      ...(family === 'first' ? { line: one, from: three, to: four } : { line: three, from: one, to: two }),
      bottom,
      top,
      face: 'both',
      over: 'over-posts',
    })),
  fc
    .record({
      corners: fc.array(fc.tuple(first, second), { minLength: 2, maxLength: 4 }),
      bottom: height,
      top: height,
    })
    .map(({ corners, ...rest }): Zone => ({
      shape: 'flat',
      corners: corners.map((pair) => pair.join('')),
      ...rest,
    })),
  fc
    .record({
      one: first,
      two: first,
      from: second,
      to: second,
      low: height,
      high: height,
      below: fc.nat(500),
    })
    .map(({ one, two, from, to, low, high, below }): Zone => ({
      shape: 'slope',
      family: 'first',
      eaves: one,
      ridge: two,
      from,
      to,
      eavesHeight: low,
      ridgeHeight: high,
      below,
    })),
);

/** Ends on lines as often as anywhere, so that axes lie in surfaces and touch corners. */
const coordinate = fc.oneof(
  fc.integer({ min: 0, max: 5 }).map((line) => line * BAY),
  fc.integer({ min: -500, max: 9600 }),
);
const point = fc.tuple(coordinate, coordinate, height);

const SAMPLES = 400;

test('what is clipped is what a walk along the axis finds inside', () => {
  let seen = 0;
  fc.assert(
    fc.property(zone, point, point, (any, a, b) => {
      const read = zoneBody(any, someReader);
      fc.pre(read.ok && Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) >= 1);
      if (!read.ok) return;
      const axis = axisBetween(a, b);
      const stretch = clipAxis(axis, read.body);
      if (stretch) {
        seen++;
        expect(stretch.from).toBeGreaterThanOrEqual(0);
        expect(stretch.to).toBeLessThanOrEqual(axis.length);
      }
      for (let i = 0; i <= SAMPLES; i++) {
        const along = (axis.length * i) / SAMPLES;
        // Within a few millimetres of an end tolerance and slope decide.
        const slack = stretch
          ? Math.min(Math.abs(along - stretch.from), Math.abs(along - stretch.to))
          : Infinity;
        if (slack < 0.5) continue;
        const expected = stretch !== null && along > stretch.from && along < stretch.to;
        if (isInside(pointOn(axis, along), read.body) !== expected) {
          // Only touching: a graze that has no length of its own.
          const deeper = read.body.map(({ normal, limit }) => ({ normal, limit: limit - 0.05 }));
          expect(expected || isInside(pointOn(axis, along), deeper)).toBe(false);
        }
      }
    }),
    { numRuns: 1500 },
  );
  expect(seen).toBeGreaterThan(100);
});
