import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { clipAxis, isInside, type Convex } from '#domain/frame/clip';
import { axisOf } from '#domain/frame/axis-of';
import { gridReader } from '#domain/frame/grid-reader';
import { SHAKU_MM } from '#domain/frame/length';
import { WALL_REACH_MM, ZONE_PROBLEMS, type Zone } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import { lengthOf, unionOf } from '#domain/record/stretches';
import { axisBetween, BAY, pointAt, someGrid, someReader } from '../../support/some-grid.ts';

type Wall = Extract<Zone, { shape: 'wall' }>;
type Flat = Extract<Zone, { shape: 'flat' }>;
type Slope = Extract<Zone, { shape: 'slope' }>;

const WALL: Wall = {
  shape: 'wall',
  family: 'first',
  line: 'ろ',
  from: '二',
  to: '四',
  bottom: 450,
  top: 3000,
  face: 'both',
  over: 'between-posts',
};
const FLOOR: Flat = { shape: 'flat', corners: ['い一', 'は三'], bottom: 300, top: 450 };
const ROOF: Slope = {
  shape: 'slope',
  family: 'first',
  eaves: 'い',
  ridge: 'は',
  from: '一',
  to: '三',
  eavesHeight: 6000,
  ridgeHeight: 6000 + 0.4 * 2 * BAY,
  below: 100,
};

function body(zone: Zone, reader = someReader): Convex {
  const read = zoneBody(zone, reader);
  if (!read.ok) throw new Error(read.problem.reason);
  return read.body;
}
function problem(zone: Zone) {
  const read = zoneBody(zone, someReader);
  return read.ok ? null : [read.problem.reason, read.problem.field];
}
const inside = (zone: Zone) => {
  const convex = body(zone);
  return (x: number, y: number, z: number) => isInside(pointAt(x, y, z), convex);
};

describe('a wall', () => {
  it.each(['first', 'second'] as const)('on a line of the %s family', (family) => {
    const zone =
      family === 'first' ? WALL : ({ ...WALL, family, line: '二', from: 'ろ', to: 'に' } satisfies Wall);
    const is = inside(zone);
    // Across and along the wall, whichever way it stands.
    const at = (across: number, along: number, z: number) =>
      family === 'first' ? is(across, along, z) : is(along, across, z);
    const [middle, edge] = [1000, 0.1];
    expect(at(BAY, 2 * BAY, middle)).toBe(true);
    expect(at(BAY + WALL_REACH_MM, BAY, 450)).toBe(true);
    expect(at(BAY - WALL_REACH_MM, 3 * BAY, 3000)).toBe(true);
    expect(at(BAY + WALL_REACH_MM + edge, 2 * BAY, middle)).toBe(false);
    expect(at(BAY - WALL_REACH_MM - edge, 2 * BAY, middle)).toBe(false);
    expect(at(BAY, BAY - edge, middle)).toBe(false);
    expect(at(BAY, 3 * BAY + edge, middle)).toBe(false);
    expect(at(BAY, 2 * BAY, 450 - edge)).toBe(false);
    expect(at(BAY, 2 * BAY, 3000 + edge)).toBe(false);
  });
  it('is the same from either end, and may begin at half a bay', () => {
    expect(body({ ...WALL, from: '四', to: '二' })).toEqual(body(WALL));
    expect(inside({ ...WALL, from: '又二' })(BAY, 1.4 * BAY, 1000)).toBe(false);
    expect(inside({ ...WALL, from: '又二' })(BAY, 1.6 * BAY, 1000)).toBe(true);
  });
});

describe('a flat zone', () => {
  it('of two corners is their rectangle, whichever two', () => {
    const [is, turned] = [inside(FLOOR), inside({ ...FLOOR, corners: ['は一', 'い三'] })];
    for (const x of [-1, 0, BAY, 2 * BAY, 2 * BAY + 1])
      for (const y of [-1, 0, BAY, 2 * BAY, 2 * BAY + 1]) {
        const expected = x >= 0 && x <= 2 * BAY && y >= 0 && y <= 2 * BAY;
        expect([is(x, y, 400), turned(x, y, 400)]).toEqual([expected, expected]);
      }
    expect([is(BAY, BAY, 299), is(BAY, BAY, 300), is(BAY, BAY, 451)]).toEqual([false, true, false]);
  });
  it('is the same in either turning and from any corner, with corners in its sides', () => {
    const corners = ['い一', 'は一', 'ほ一', 'ほ三', 'は四', 'い三'];
    const points = Array.from({ length: 13 * 13 }, (_, i) => [
      ((i % 13) * BAY) / 2 - 500,
      (Math.floor(i / 13) * BAY) / 2 - 500,
    ]);
    const told = (order: readonly string[]) => {
      const is = inside({ ...FLOOR, corners: order });
      return points.map(([x, y]) => is(x ?? 0, y ?? 0, 400));
    };
    const expected = told(corners);
    expect(expected.filter(Boolean).length).toBeGreaterThan(10);
    for (let turn = 0; turn < corners.length; turn++) {
      const order = [...corners.slice(turn), ...corners.slice(0, turn)];
      expect([told(order), told(order.toReversed())]).toEqual([expected, expected]);
    }
  });
});

describe('a roof slope', () => {
  const is = inside(ROOF);
  it('hides to its depth square to its surface', () => {
    const surface = 6000 + 0.4 * BAY;
    // Plumb depth = depth square to it × √(1 + 0.4²).
    const plumb = 100 * Math.hypot(1, 0.4);
    expect([is(BAY, BAY, surface), is(BAY, BAY, surface + 0.1)]).toEqual([true, false]);
    expect([is(BAY, BAY, surface - plumb + 0.1), is(BAY, BAY, surface - plumb - 0.1)]).toEqual([true, false]);
  });
  it('ends at eaves, ridge and its two lines', () => {
    expect([is(-1, BAY, 5990), is(1, BAY, 5990)]).toEqual([false, true]);
    expect([is(2 * BAY + 1, BAY, 7450), is(2 * BAY - 1, BAY, 7450)]).toEqual([false, true]);
    expect([is(BAY, -1, 6700), is(BAY, 2 * BAY + 1, 6700)]).toEqual([false, false]);
  });
  it('hides the rafter that lies in its surface over its whole length, though heights are rounded', () => {
    const shaku = gridReader(someGrid(3 * SHAKU_MM));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), fc.constantFrom('first', 'second'), (sun, family) => {
        const rise = (sun / 100) * 6 * SHAKU_MM;
        const [from, to] = family === 'first' ? ['い二', 'は二'] : ['ろ一', 'ろ三'];
        const rafter = axisOf(
          { from, to, level: '軒', base: 0, top: rise, width: 45, depth: 60 },
          { lies: 'sloping', section: null },
          shaku,
        );
        const ends = family === 'first' ? ['い', 'は', '一', '四'] : ['一', '三', 'い', 'に'];
        const [eaves, ridge, left, right] = ends as [string, string, string, string];
        const zone = {
          ...ROOF,
          family,
          eaves,
          ridge,
          from: left,
          to: right,
          ridgeHeight: 6000 + rise,
        } as Slope;
        expect(rafter.ok && clipAxis(rafter.axis, body(zone, shaku))).toEqual({
          from: expect.closeTo(0, 1),
          to: expect.closeTo(rafter.ok ? rafter.axis.length : NaN, 1),
        });
      }),
    );
  });
  it('may fall towards its ridge line or lie flat', () => {
    const lean = inside({ ...ROOF, eavesHeight: 7000, ridgeHeight: 6000 });
    expect([lean(0, BAY, 6999), lean(2 * BAY, BAY, 5999), lean(BAY, BAY, 6600)]).toEqual([true, true, false]);
    expect(inside({ ...ROOF, ridgeHeight: 6000 })(BAY, BAY, 5901)).toBe(true);
  });
});

const IMPOSSIBLE: readonly (readonly [(typeof ZONE_PROBLEMS)[number], string, Zone])[] = [
  ['unknown-line', 'line', { ...WALL, line: '二' }],
  ['unknown-line', 'from', { ...WALL, from: 'い' }],
  ['unknown-line', 'to', { ...WALL, to: '七' }],
  ['no-width', 'to', { ...WALL, to: '二' }],
  ['no-height', 'top', { ...WALL, top: 450 }],
  ['no-height', 'top', { ...WALL, top: NaN }],
  ['unknown-corner', 'い七', { ...FLOOR, corners: ['い一', 'い七'] }],
  ['too-few-corners', 'corners', { ...FLOOR, corners: ['い一'] }],
  ['too-few-corners', 'corners', { ...FLOOR, corners: [] }],
  ['no-width', 'corners', { ...FLOOR, corners: ['い一', 'い三'] }],
  ['no-width', 'corners', { ...FLOOR, corners: ['い一', 'い一'] }],
  ['no-width', 'corners', { ...FLOOR, corners: ['い一', 'ろ二', 'は三', 'に四'] }],
  ['no-height', 'top', { ...FLOOR, bottom: 451 }],
  // A bow-tie of no area and one of some; an L; a star; twice around; there and back along a side.
  ['not-convex', 'corners', { ...FLOOR, corners: ['い一', 'ろ二', 'ろ一', 'い二'] }],
  ['not-convex', 'corners', { ...FLOOR, corners: ['い一', 'ろ三', 'は一', 'い二'] }],
  ['not-convex', 'corners', { ...FLOOR, corners: ['い一', 'は一', 'は二', 'ろ二', 'ろ三', 'い三'] }],
  ['not-convex', 'corners', { ...FLOOR, corners: ['は一', 'に五', 'い三', 'ほ三', 'ろ五'] }],
  [
    'not-convex',
    'corners',
    { ...FLOOR, corners: ['い一', 'ろ一', 'ろ二', 'い二', 'い一', 'ろ一', 'ろ二', 'い二'] },
  ],
  ['not-convex', 'corners', { ...FLOOR, corners: ['い一', 'は一', 'ろ一', 'は一', 'は三', 'い三'] }],
  ['unknown-line', 'eaves', { ...ROOF, eaves: '一' }],
  ['unknown-line', 'ridge', { ...ROOF, ridge: '' }],
  ['unknown-line', 'to', { ...ROOF, to: 'い' }],
  ['no-width', 'ridge', { ...ROOF, ridge: 'い' }],
  ['no-width', 'to', { ...ROOF, to: '一' }],
  ['no-height', 'below', { ...ROOF, below: 0 }],
];

describe('what cannot be', () => {
  it.each(IMPOSSIBLE)('%s at %s: %o', (reason, field, zone) =>
    expect(problem(zone)).toEqual([reason, field]),
  );
  test('every reason has a case', () =>
    expect(ZONE_PROBLEMS.filter((reason) => !IMPOSSIBLE.some(([known]) => known === reason))).toEqual([]));
});

describe('a rail through many bays', () => {
  const rail = axisBetween([BAY, -300, 1200], [BAY, 5 * BAY + 300, 1200], [15, 105]);
  const bays = ['一', '二', '三', '四', '五'].map((from, i) => ({
    ...WALL,
    from,
    to: ['二', '三', '四', '五', '六'][i] ?? '',
  }));
  it('is hidden bay by bay: all of it between the outer lines, none twice', () => {
    const hidden = bays.map((zone) => clipAxis(rail, body(zone)));
    expect(hidden.every((stretch) => stretch !== null)).toBe(true);
    const all = hidden.flatMap((stretch) => stretch ?? []);
    expect(unionOf(all)).toEqual([{ from: 300, to: 300 + 5 * BAY }]);
    expect(all.reduce((sum, { from, to }) => sum + to - from, 0)).toBeCloseTo(lengthOf(all), 6);
  });
  it('adds up in a grid of shaku as well, for any choice of lines', () => {
    const labels = ['一', '又一', '二', '又二', '三', '又三', '四', '又四', '五', '又五', '六'];
    const shaku = gridReader(someGrid(3 * SHAKU_MM));
    const whole = axisOf(
      { from: 'ろ一', to: 'ろ六', level: '1F', base: 900, top: null, width: 15, depth: 105 },
      { lies: 'level', section: null },
      shaku,
    );
    fc.assert(
      fc.property(fc.subarray(labels, { minLength: 2 }), (lines) => {
        const parts = lines.slice(1).map((to, i) => ({ ...WALL, from: lines[i] ?? '', to }));
        const hidden = parts.map((zone) => (whole.ok ? clipAxis(whole.axis, body(zone, shaku)) : null));
        const all = hidden.flatMap((stretch) => stretch ?? []);
        expect(all).toHaveLength(parts.length);
        expect(unionOf(all)).toHaveLength(1);
        expect(all.reduce((sum, { from, to }) => sum + to - from, 0)).toBeCloseTo(lengthOf(all), 6);
      }),
    );
  });
});

test('a post in two walls is in both, and in the floor only as far as it stands in it', () => {
  const post = axisBetween([BAY, BAY, 400], [BAY, BAY, 3250], [120, 120]);
  const across: Wall = { ...WALL, family: 'second', line: '二', from: 'い', to: 'ろ' };
  expect(clipAxis(post, body(WALL))).toEqual({ from: 50, to: 2600 });
  expect(clipAxis(post, body(across))).toEqual({ from: 50, to: 2600 });
  expect(clipAxis(post, body(FLOOR))).toEqual({ from: 0, to: 50 });
  expect(clipAxis(post, body({ ...WALL, from: '三' }))).toBeNull();
});
