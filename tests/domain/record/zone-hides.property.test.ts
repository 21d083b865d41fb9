import fc from 'fast-check';
import { expect, it } from 'vitest';
import { clipAxis } from '#domain/frame/clip';
import { gridReader } from '#domain/frame/grid-reader';
import type { Mm } from '#domain/frame/length';
import type { Axis } from '#domain/frame/set-out';
import type { Zone } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import { hiddenByZones } from '#domain/record/zone-hides';

const line = (labels: string) => [...labels].map((label, i) => ({ label, at: (i * 910) as Mm }));
const reader = gridReader({
  first: { lines: line('いろはに'), runs: 'leftward' },
  second: { lines: line('一二三四'), runs: 'downward' },
  levels: [],
});

const first = fc.constantFrom(...'いろはに');
const second = fc.constantFrom(...'一二三四');
const height = fc.integer({ min: 0, max: 8 }).map((n) => n * 450);
const corner = fc.tuple(first, second).map(([f, s]) => f + s);
const zone: fc.Arbitrary<Zone> = fc.oneof(
  fc.record({
    ...{ shape: fc.constant('flat' as const), bottom: height, top: height },
    corners: fc.oneof(
      fc.tuple(corner, corner),
      fc.tuple(corner, corner, corner),
      fc.tuple(corner, corner, corner, corner),
    ),
  }),
  fc.record({
    ...{ shape: fc.constant('slope' as const), family: fc.constant('second' as const) },
    ...{ eaves: second, ridge: second, from: first, to: first },
    ...{ eavesHeight: height, ridgeHeight: height, below: fc.constantFrom(1, 150, 2000) },
  }),
);
const point = fc
  .tuple(fc.integer({ min: -1, max: 7 }), fc.integer({ min: -1, max: 7 }), height)
  .map(([x, y, z]) => ({ x: (x * 455) as Mm, y: (y * 455) as Mm, z: z as Mm }));
const axis: fc.Arbitrary<Axis> = fc
  .tuple(point, point)
  .filter(([a, b]) => a.x !== b.x || a.y !== b.y || a.z !== b.z)
  .map(([start, end]) => ({
    ...{ start, end, length: Math.hypot(end.x - start.x, end.y - start.y, end.z - start.z) as Mm },
    ...{ width: 105 as Mm, depth: 105 as Mm, runs: 'level', level: null, assumed: [] },
  }));

// A kind that nobody knows is hidden by whatever it lies in, so that only the place decides.
it('leaves nothing out that clipping every member to every zone finds', () => {
  fc.assert(
    fc.property(fc.array(zone, { maxLength: 4 }), fc.array(axis, { maxLength: 6 }), (zones, axes) => {
      const coverings = zones.map((one, i) => ({
        ...{ id: String(i), kind: 'other' as const, zone: one, except: new Set<string>() },
      }));
      const members = axes.map((one, i) => ({
        ...{ mark: String(i), kind: null, track: 'wall' as const, axis: one },
      }));
      const found = hiddenByZones(coverings, members, reader, []);
      for (const covering of coverings) {
        const read = zoneBody(covering.zone, reader);
        const all = members.flatMap(({ mark, axis: one }) => {
          const stretch = read.ok ? clipAxis(one, read.body) : null;
          return stretch && stretch.to - stretch.from >= 5 ? [[mark, stretch]] : [];
        });
        expect(found.get(covering.id)?.map(({ mark, stretch }) => [mark, stretch])).toEqual(all);
      }
    }),
    { numRuns: 3000 },
  );
});
