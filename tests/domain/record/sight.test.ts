import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { isInside, type Convex } from '#domain/frame/clip';
import { memberBody } from '#domain/frame/member-body';
import { opaqueBody } from '#domain/frame/opaque-body';
import type { Zone } from '#domain/frame/zone';
import { sightThrough, targetOf, tripleOf, type FrameMember } from '#domain/record/sight';
import { axisBetween, BAY, pointAt, someReader } from '../../support/some-grid.ts';

type Ends = Parameters<typeof axisBetween>;
const member = (mark: string, ...[start, end, section]: Ends): FrameMember => ({
  mark,
  axis: axisBetween(start, end, section),
});
const rail = member('rail', [0, 0, 1500], [0, BAY, 1500], [15, 105]);
const whole = targetOf(rail, { from: 0, to: BAY });
const eye = pointAt(1000, BAY / 2, 1500);
const look = (opaque: readonly Convex[], members: readonly FrameMember[], from = eye, at = whole) =>
  sightThrough(opaque, members).look(from, at);

describe('a rail a bay long', () => {
  it('is seen from a metre before its middle', () => expect(look([], [rail])).toBe('seen'));
  it.each([
    ['too near', pointAt(700, BAY / 2, 1500)],
    ['too far', pointAt(6100, BAY / 2, 1500)],
    ['along its axis', pointAt(300, BAY + 2000, 1500)],
  ])('is out of reach from %s', (_, from) => expect(look([], [rail], from)).toBe('out-of-reach'));
  it('is seen past what is thin and not past a post', () => {
    const before = (size: number) => member('x', [500, BAY / 2, 0], [500, BAY / 2, 3000], [size, size]);
    expect([look([], [before(89)]), look([], [before(90)])]).toEqual(['seen', 'blocked']);
    const board = member('board', [500, 0, 1500], [500, BAY, 1500], [30, 240]);
    expect(look([], [board])).toBe('seen');
  });
  it('is not hidden by itself, by the posts it ends in, nor by what crosses it', () => {
    const posts = [0, BAY].map((y) => member(`post ${y}`, [0, y, 0], [0, y, 3000], [120, 120]));
    const beam = member('rail', [0, 0, 1500], [0, BAY, 1500], [120, 240]);
    const across = member('joint', [-500, BAY / 2, 1500], [90, BAY / 2, 1500], [120, 120]);
    expect([look([], posts), look([], [beam]), look([], [across])]).toEqual(['seen', 'seen', 'seen']);
  });
});

describe('a wall that has closed', () => {
  const closed = (face: 'both' | 'lower' | 'higher') => {
    const zone: Zone = {
      shape: 'wall',
      family: 'first',
      line: 'い',
      from: '一',
      to: '二',
      bottom: 0,
      top: 3000,
      face,
      over: 'between-posts',
    };
    const read = opaqueBody(zone, someReader);
    return read.ok ? [read.body] : [];
  };
  const other = pointAt(-1000, BAY / 2, 1500);
  it('shows its rail at its open face only', () => {
    expect([look(closed('both'), []), look(closed('both'), [], other)]).toEqual(['blocked', 'blocked']);
    expect([look(closed('lower'), []), look(closed('lower'), [], other)]).toEqual(['seen', 'blocked']);
    expect([look(closed('higher'), []), look(closed('higher'), [], other)]).toEqual(['blocked', 'seen']);
  });
});

describe('room to stand', () => {
  const hasRoom = (...members: FrameMember[]) => sightThrough([], members).hasRoom(eye);
  it('is not in a wall, nor in a rail at the knee, but over joists and under beams', () => {
    const across = (z: number) => member('m', [1000, 0, z], [1000, BAY, z], [45, 105]);
    expect(hasRoom(member('post', [1100, BAY / 2, 0], [1100, BAY / 2, 3000], [120, 120]))).toBe(false);
    expect(hasRoom(member('post', [1300, BAY / 2, 0], [1300, BAY / 2, 3000], [120, 120]))).toBe(true);
    expect([hasRoom(across(0)), hasRoom(across(600)), hasRoom(across(1500)), hasRoom(across(2600))]).toEqual([
      true,
      false,
      false,
      true,
    ]);
  });
  it('is not in what has closed', () => {
    const box: Convex = [
      { normal: [1, 0, 0], limit: 1100 },
      { normal: [-1, 0, 0], limit: -900 },
      { normal: [0, 1, 0], limit: BAY },
      { normal: [0, -1, 0], limit: 0 },
      { normal: [0, 0, 1], limit: 3000 },
      { normal: [0, 0, -1], limit: 0 },
    ];
    expect(sightThrough([box], []).hasRoom(eye)).toBe(false);
  });
});

const STEP_MM = 5;

const along = fc.integer({ min: 0, max: 4000 });
const place = fc.tuple(along, along, along);
const anyMember = fc
  .tuple(place, place, fc.constantFrom(30, 89, 90, 120, 300), fc.nat(2))
  .map(([start, way, size, run], i = 0): FrameMember => {
    // Upright, level or any; so that lines of sight meet edges and faces alike.
    const end: [number, number, number] =
      run === 0
        ? [start[0], start[1], start[2] + 2000]
        : run === 1
          ? [start[0] + 1500, start[1], start[2]]
          : way;
    return member(`m${i}`, start, end, [size, size + 10]);
  })
  .filter(({ axis }) => axis.length > 500);

test('what is seen is what a walk along each line of sight finds free', () => {
  let thin = 0;
  const told = { seen: 0, blocked: 0, 'out-of-reach': 0 };
  fc.assert(
    fc.property(fc.array(anyMember, { maxLength: 6 }), anyMember, place, (others, wanted, from) => {
      const members = others.map((one, i) => ({ ...one, mark: `m${i}` }));
      const target = targetOf({ ...wanted, mark: 'wanted' }, { from: 0, to: wanted.axis.length });
      const eye = pointAt(...from);
      const found = sightThrough([], members).look(eye, target);
      told[found]++;
      if (found === 'out-of-reach') return;
      const bodies = members.filter(({ axis }) => axis.width >= 90).map(({ axis }) => memberBody(axis));
      const inside = target.points.flatMap((point) =>
        bodies
          .filter((body) => !isInside(pointAt(...point), body))
          .map((body) => {
            const start = tripleOf(eye);
            const way = [0, 1, 2].map((i) => (point[i] ?? 0) - (start[i] ?? 0));
            const size = Math.hypot(...way);
            let mm = 0;
            for (let at = STEP_MM / 2; at < size; at += STEP_MM) {
              const [x, y, z] = way.map((step, i) => (start[i] ?? 0) + (step * at) / size);
              if (isInside(pointAt(x ?? 0, y ?? 0, z ?? 0), body)) mm += STEP_MM;
            }
            return mm;
          }),
      );
      const deepest = Math.max(0, ...inside);
      // An edge thinner than a step or two may go either way.
      if (deepest === 0 && found === 'blocked') thin++;
      else if (deepest > 2 * STEP_MM) expect(found).toBe('blocked');
    }),
    { numRuns: 400 },
  );
  expect(Math.min(told.seen, told.blocked)).toBeGreaterThan(10);
  expect(thin).toBeLessThan(told.blocked / 10);
});

test('reach is a matter of every point', () => {
  fc.assert(
    fc.property(anyMember, place, (wanted, from) => {
      const target = targetOf(wanted, { from: 0, to: wanted.axis.length });
      const isNear = target.points.every((point) => {
        const way = [0, 1, 2].map((i) => (point[i] ?? 0) - (from[i] ?? 0));
        const size = Math.hypot(...way);
        const cosine = way.reduce((sum, step, i) => sum + (step * (target.direction[i] ?? 0)) / size, 0);
        const degrees = (Math.acos(Math.min(1, Math.abs(cosine))) * 180) / Math.PI;
        return size >= 800 && size <= 6000 && degrees >= 30;
      });
      expect(look([], [], pointAt(...from), target)).toBe(isNear ? 'seen' : 'out-of-reach');
    }),
    { numRuns: 500 },
  );
});
