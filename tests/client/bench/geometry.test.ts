import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundingBox, regionProblem, type Region, type UnitPoint } from '#domain/photo/region';
import {
  boxAround,
  boxBetween,
  closedPolygon,
  growRegion,
  handlePoints,
  MIN_SIDE,
  moveRegion,
  pullHandle,
} from '../../../client/screens/bench/geometry.ts';

const anywhere = fc.double({ min: -3, max: 3, noNaN: true });
const inside = fc.double({ min: 0, max: 1, noNaN: true });
const pointAnywhere = fc.tuple(anywhere, anywhere);
const box: fc.Arbitrary<Region> = fc
  .tuple(fc.tuple(inside, inside), fc.tuple(inside, inside))
  .map(([a, b]) => boxBetween(a, b))
  .filter((region) => region !== null);
const polygon: fc.Arbitrary<Region> = fc
  .array(fc.tuple(inside, inside), { minLength: 3, maxLength: 8 })
  .map((points): Region => ({ shape: 'polygon', points }))
  .filter((region) => regionProblem(region) === null);
const region = fc.oneof(box, polygon);

describe('whatever the hand does', () => {
  test('a box between two points is usable or none', () => {
    fc.assert(
      fc.property(pointAnywhere, pointAnywhere, (a, b) => {
        const drawn = boxBetween(a, b);
        expect(drawn === null || regionProblem(drawn) === null).toBe(true);
      }),
    );
  });
  test('a box around a point keeps its size and stays inside', () => {
    fc.assert(
      fc.property(pointAnywhere, (at) => {
        const drawn = boxAround(at, [0.1, 0.2]);
        expect(regionProblem(drawn)).toBeNull();
        expect([drawn.w, drawn.h]).toEqual([0.1, 0.2]);
      }),
    );
  });
  test('moving never leaves the image and never changes the size', () => {
    fc.assert(
      fc.property(region, anywhere, anywhere, (before, dx, dy) => {
        const after = moveRegion(before, dx, dy);
        expect(regionProblem(after)).not.toBe('outside-image');
        expect(boundingBox(after).w).toBeCloseTo(boundingBox(before).w, 9);
        expect(boundingBox(after).h).toBeCloseTo(boundingBox(before).h, 9);
      }),
    );
  });
  test('growing and pulling leave a usable region', () => {
    fc.assert(
      fc.property(box, anywhere, anywhere, fc.integer({ min: 0, max: 7 }), (before, x, y, handle) => {
        expect(regionProblem(growRegion(before, x, y))).toBeNull();
        expect(regionProblem(pullHandle(before, handle, [x, y]))).toBeNull();
      }),
    );
    fc.assert(
      fc.property(polygon, anywhere, anywhere, fc.nat(7), (before, x, y, handle) => {
        expect(regionProblem(pullHandle(before, handle, [x, y]))).toBeNull();
      }),
    );
  });
});

describe('a move', () => {
  test('stops at the edge', () => {
    const start: Region = { shape: 'rectangle', x: 0.2, y: 0.2, w: 0.5, h: 0.3 };
    expect(moveRegion(start, 0.9, -0.9)).toEqual({ shape: 'rectangle', x: 0.5, y: 0, w: 0.5, h: 0.3 });
  });
});

describe('a handle', () => {
  const start: Region = { shape: 'rectangle', x: 0.2, y: 0.2, w: 0.4, h: 0.4 };
  test.each([
    [0, [0.1, 0.15], { x: 0.1, y: 0.15, w: 0.5, h: 0.45 }],
    [2, [0.9, 0.7], { x: 0.2, y: 0.2, w: 0.7, h: 0.5 }],
    [4, [0.9, 0.1], { x: 0.2, y: 0.1, w: 0.4, h: 0.5 }],
    [5, [0.9, 0.9], { x: 0.2, y: 0.2, w: 0.7, h: 0.4 }],
    [3, [0.9, 0.1], { x: 0.6, y: 0.1, w: 0.3, h: 0.1 }],
  ])('number %i pulled to %j', (handle, to, expected) => {
    const pulled = pullHandle(start, handle, to as unknown as UnitPoint);
    expect(pulled).toMatchObject({
      shape: 'rectangle',
      ...Object.fromEntries(Object.entries(expected).map(([k, v]) => [k, expect.closeTo(v, 9)])),
    });
  });
  test('sits where it pulls', () => {
    handlePoints(start).forEach((point, handle) => {
      const { x, y, w, h } = boundingBox(pullHandle(start, handle, point));
      expect([x, y, w, h]).toEqual([0.2, 0.2, 0.4, 0.4].map((n) => expect.closeTo(n, 9)));
    });
  });
  test('is ignored where nothing would be left', () => {
    expect(pullHandle(start, 2, [0.2 + MIN_SIDE / 2, 0.5])).toEqual(start);
  });
});

describe('closing an outline', () => {
  const reach: UnitPoint = [0.01, 0.01];
  test('drops the repeated point of a double press and the return to the first corner', () => {
    const closed = closedPolygon(
      [
        [0.1, 0.1],
        [0.5, 0.1],
        [0.5, 0.5],
        [0.5, 0.5],
        [0.101, 0.1],
      ],
      reach,
    );
    expect(closed).toEqual({
      shape: 'polygon',
      points: [
        [0.1, 0.1],
        [0.5, 0.1],
        [0.5, 0.5],
      ],
    });
  });
  test.each([
    [
      'two corners',
      [
        [0.1, 0.1],
        [0.5, 0.5],
      ],
    ],
    [
      'a line',
      [
        [0.1, 0.1],
        [0.3, 0.3],
        [0.5, 0.5],
      ],
    ],
    [
      'one place',
      [
        [0.1, 0.1],
        [0.1, 0.1],
        [0.1, 0.1],
      ],
    ],
  ])('refuses %s', (_, corners) =>
    expect(closedPolygon(corners as unknown as UnitPoint[], reach)).toBeNull(),
  );
});
