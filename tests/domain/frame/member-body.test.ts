import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxOf } from '#domain/frame/box-of';
import { isInside } from '#domain/frame/clip';
import { memberBody } from '#domain/frame/member-body';
import { opaqueBody } from '#domain/frame/opaque-body';
import { planIndex } from '#domain/frame/plan-index';
import type { Zone } from '#domain/frame/zone';
import { axisBetween, BAY, pointAt, someReader } from '../../support/some-grid.ts';

describe('the body of a member', () => {
  const holds = (axis: ReturnType<typeof axisBetween>) => {
    const body = memberBody(axis);
    return (x: number, y: number, z: number) => isInside(pointAt(x, y, z), body);
  };
  it('of a post is its width along the first, its depth along the second lines’ positions', () => {
    const is = holds(axisBetween([100, 200, 0], [100, 200, 2700], [120, 180]));
    expect([is(160, 200, 1), is(161, 200, 1), is(100, 290, 1), is(100, 291, 1)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
    expect([is(100, 200, 2700), is(100, 200, 2701), is(100, 200, -1)]).toEqual([true, false, false]);
  });
  it.each([
    ['along x', [0, 0, 900], [1000, 0, 900], [500, 7.5, 900], [500, 8, 900]],
    ['along x, backward', [1000, 0, 900], [0, 0, 900], [500, -7.5, 952.5], [500, 0, 953]],
    ['along y', [0, 0, 900], [0, 1000, 900], [7.5, 500, 847.5], [8, 500, 900]],
    // 3-4-5: square to the slope the half height of 52.5 is 42 up and 31.5 back.
    ['upward', [0, 0, 0], [400, 0, 300], [200 - 31, 0, 150 + 41.5], [200 - 32, 0, 150 + 43]],
  ] as const)('of a rail %s is its thickness across, its height upward', (_, start, end, within, beyond) => {
    const is = holds(axisBetween(start, end, [15, 105]));
    expect([is(within[0], within[1], within[2]), is(beyond[0], beyond[1], beyond[2])]).toEqual([true, false]);
  });
  it('of a post that leans keeps its section square to its axis', () => {
    const leaning = { ...axisBetween([0, 0, 0], [100, 0, 3000], [120, 120]), runs: 'upright' as const };
    const is = holds(leaning);
    expect([is(50 + 59, 0, 1500), is(50 + 61, 0, 1500), is(50, 60, 1500), is(50, 61, 1500)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });
});

describe('what has closed', () => {
  const wall: Zone = {
    shape: 'wall',
    family: 'first',
    line: 'ろ',
    from: '一',
    to: '二',
    bottom: 0,
    top: 3000,
    face: 'both',
    over: 'over-posts',
  };
  const told = (face: 'both' | 'lower' | 'higher') => {
    const read = opaqueBody({ ...wall, face }, someReader);
    return [-100, -20, 0, 20, 100].map((x) => read.ok && isInside(pointAt(BAY + x, 900, 100), read.body));
  };
  it('on one face leaves the line open to the other', () => {
    expect(told('both')).toEqual([true, true, true, true, true]);
    expect(told('lower')).toEqual([true, true, false, false, false]);
    expect(told('higher')).toEqual([false, false, false, true, true]);
  });
  it('says what is wrong with its zone', () =>
    expect(opaqueBody({ ...wall, line: 'x' }, someReader)).toMatchObject({ ok: false }));
});

const coordinate = fc.integer({ min: -3000, max: 9000 });
const point = fc.tuple(coordinate, coordinate, fc.integer({ min: 0, max: 6000 }));
const axes = fc
  .tuple(point, point)
  .filter(([a, b]) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) > 10)
  .map(([a, b]) => axisBetween(a, b, [120, 240]));

describe('boxes in plan', () => {
  it('hold all corners of a member, and no smaller box does', () => {
    fc.assert(
      fc.property(axes, (axis) => {
        const { low, high } = boxOf(memberBody(axis));
        // The corners by hand: from both ends along the two sides of the section.
        const [dx, dy, dz] = [
          axis.end.x - axis.start.x,
          axis.end.y - axis.start.y,
          axis.end.z - axis.start.z,
        ];
        const plan = Math.hypot(dx, dy);
        const across = axis.runs === 'upright' ? [1, 0, 0] : [-dy / plan, dx / plan, 0];
        const size = Math.hypot(dx, dy, dz);
        const upward =
          axis.runs === 'upright'
            ? [0, 1, 0]
            : [(-dz * dx) / plan / size, (-dz * dy) / plan / size, plan / size];
        const corners = [axis.start, axis.end].flatMap(({ x, y, z }) =>
          [-60, 60].flatMap((w) =>
            [-120, 120].map((d) =>
              [x, y, z].map((at, i) => at + w * (across[i] ?? 0) + d * (upward[i] ?? 0)),
            ),
          ),
        );
        for (const i of [0, 1, 2] as const) {
          const own = corners.map((corner) => corner[i] ?? NaN);
          expect(Math.abs(low[i] - Math.min(...own))).toBeLessThan(0.1);
          expect(Math.abs(high[i] - Math.max(...own))).toBeLessThan(0.1);
        }
      }),
    );
  });
  it('are found along a line as by asking all of them', () => {
    fc.assert(
      fc.property(
        fc.array(axes, { maxLength: 20 }),
        fc.array(fc.tuple(point, point), { minLength: 1, maxLength: 5 }),
        fc.constantFrom(0, 200),
        (all, lines, slack) => {
          const boxes = all.map((axis) => boxOf(memberBody(axis)));
          const index = planIndex(boxes);
          for (const [a, b] of lines) {
            const asked: number[] = [];
            expect(index.find(a, b, slack, (number) => asked.push(number) < 0)).toBe(-1);
            expect(new Set(asked).size).toBe(asked.length);
            const samples = Array.from({ length: 101 }, (_, i) =>
              ([0, 1, 2] as const).map((k) => a[k] + ((b[k] - a[k]) * i) / 100),
            );
            for (const [number, { low, high }] of boxes.entries()) {
              const isMet = samples.some((at) =>
                ([0, 1, 2] as const).every(
                  (k) => (at[k] ?? NaN) >= low[k] - slack && (at[k] ?? NaN) <= high[k] + slack,
                ),
              );
              if (!isMet) continue;
              expect(asked).toContain(number);
              expect(index.find(a, b, slack, (other) => other === number)).toBe(number);
            }
          }
        },
      ),
      { numRuns: 150 },
    );
  });
});
