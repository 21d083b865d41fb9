import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HALF, planPoint, planReach, scaleBar } from '../../../client/parts/plan-layout.ts';

const metres = fc.double({ min: 0, max: 100_000, noNaN: true });

describe('the plan', () => {
  test('holds the whole site, and what is near it', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 10_000, noNaN: true }), fc.array(metres), (radius, far) => {
        const reach = planReach(radius, far);
        expect(reach).toBeGreaterThan(radius);
        expect(reach).toBeLessThanOrEqual(radius * 4);
        for (const distance of far.filter((d) => d < radius * 3)) expect(distance).toBeLessThan(reach);
      }),
    );
  });
  test('is not made small by one photo from another town', () => {
    expect(planReach(100, [50, 40_000])).toBe(120);
    expect(planReach(100, [200, 40_000])).toBe(240);
  });
  test('has north above and east to the right', () => {
    expect(planPoint({ eastM: 0, northM: 50 }, 100)).toEqual({ x: 0, y: -HALF / 2, isBeyond: false });
    expect(planPoint({ eastM: 50, northM: 0 }, 100)).toEqual({ x: HALF / 2, y: -0, isBeyond: false });
  });
  test('puts what is farther at its edge, in its direction', () => {
    fc.assert(
      fc.property(metres, metres, (eastM, northM) => {
        const { x, y, isBeyond } = planPoint({ eastM, northM: -northM }, 100);
        expect(Math.max(Math.abs(x), Math.abs(y))).toBeLessThanOrEqual(HALF);
        if (isBeyond) expect(Math.atan2(y, x)).toBeCloseTo(Math.atan2(northM, eastM), 6);
      }),
    );
  });
});

describe('the scale bar', () => {
  test.each([
    [120, 50],
    [100, 50],
    [20, 10],
    [400, 200],
    [4000, 2000],
    [31, 20],
  ])('of a plan that reaches %d m is %d m', (reach, expected) => {
    expect(scaleBar(reach).metres).toBe(expected);
  });
  test('is a round number, between an eighth and a third of the width, and as long as it says', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 50_000, noNaN: true }), (reach) => {
        const { metres: said, part } = scaleBar(reach);
        expect(String(said)).toMatch(/^[125]0*$/);
        expect(part).toBeGreaterThan(1 / 8);
        expect(part).toBeLessThanOrEqual(1 / 3 + 1e-9);
        expect(part * 2 * reach).toBeCloseTo(said, 6);
      }),
    );
  });
});
