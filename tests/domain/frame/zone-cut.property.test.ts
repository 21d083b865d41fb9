import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isInside } from '#domain/frame/clip';
import { zoneCut, zoneShadow } from '#domain/frame/drawing/zone-outline';
import { gridReader } from '#domain/frame/grid-reader';
import type { Mm } from '#domain/frame/length';
import type { Zone } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import { BAY, someGrid } from '../../support/some-grid.ts';

const reader = gridReader(someGrid());
const ends = { from: '一', to: '三' } as const;
const ZONES: readonly Zone[] = [
  {
    shape: 'wall',
    family: 'first',
    line: 'い',
    ...ends,
    bottom: 560,
    top: 3180,
    face: 'both',
    over: 'over-posts',
  },
  { shape: 'flat', corners: ['い一', 'は一', 'ろ三'], bottom: 300, top: 900 },
  {
    shape: 'slope',
    family: 'first',
    eaves: 'い',
    ridge: 'は',
    ...ends,
    eavesHeight: 3400,
    ridgeHeight: 5200,
    below: 400,
  },
];
const bodies = ZONES.map((zone) => {
  const read = zoneBody(zone, reader);
  if (!read.ok) throw new Error(`The ${zone.shape} has no body.`);
  return { zone, body: read.body };
});

/** By the angles at which a point sees the corners: all around from within, none from without. */
function isWithin(corners: readonly (readonly [number, number])[], u: number, v: number): boolean {
  const turned = corners.reduce((sum, [au, av], i) => {
    const [bu, bv] = corners[(i + 1) % corners.length] ?? [au, av];
    const [x1, y1, x2, y2] = [au - u, av - v, bu - u, bv - v];
    return sum + Math.atan2(x1 * y2 - y1 * x2, x1 * x2 + y1 * y2);
  }, 0);
  return Math.abs(turned) > Math.PI;
}

/** Never on a line or a whole height, where it is a matter of taste whether a surface is inside. */
const between = (min: number, max: number) => fc.integer({ min, max }).map((value) => (value + 0.37) as Mm);
const point = fc.record({
  x: between(-400, 2 * BAY + 400),
  y: between(-400, 3 * BAY),
  z: between(0, 5600),
});
const family = fc.constantFrom('first' as const, 'second' as const);

it('an elevation through a point shows it in a zone just where the zone has it inside', () => {
  fc.assert(
    fc.property(fc.constantFrom(...bodies), family, point, ({ zone, body }, of, at) => {
      const [across, along] = of === 'first' ? [at.x, at.y] : [at.y, at.x];
      expect(isWithin(zoneCut(zone, of, across, reader), along, at.z)).toBe(isInside(at, body));
    }),
    { numRuns: 2000 },
  );
});

it('what a zone has inside lies in its shadow, and over each spot of its shadow it has something inside', () => {
  const heights = Array.from({ length: 300 }, (_, i) => (i * 20 + 0.37) as Mm);
  fc.assert(
    fc.property(fc.constantFrom(...bodies), point, ({ zone, body }, { x, y }) => {
      const isOver = heights.some((z) => isInside({ x, y, z }, body));
      expect(isWithin(zoneShadow(zone, reader), x, y)).toBe(isOver);
    }),
    { numRuns: 500 },
  );
});
