import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EMPTY_HAND, handDown, handMove, handUp } from '../../../client/screens/frame/sheet-hand.ts';
import { fitted, moved, pointUnder, viewBoxOf, zoomed } from '../../../client/screens/frame/sheet-window.ts';

const BOUNDS = { left: -5500, top: -7000, right: 100, bottom: -300 };
const SIZE = { width: 900, height: 600 };

describe('the window on a sheet', () => {
  const whole = fitted(BOUNDS, SIZE);

  it('shows the whole of it with room for labels', () => {
    const [x = 0, y = 0, w = 0, h = 0] = viewBoxOf(whole, SIZE).split(' ').map(Number);
    expect(x).toBeLessThan(BOUNDS.left);
    expect(y).toBeLessThan(BOUNDS.top);
    expect(x + w).toBeGreaterThan(BOUNDS.right);
    expect(y + h).toBeGreaterThan(BOUNDS.bottom);
    expect(w / h).toBeCloseTo(SIZE.width / SIZE.height, 9);
  });

  it('comes closer about a point, which stays under the hand', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.01, max: 5, noNaN: true }),
        fc.integer({ min: 0, max: 900 }),
        fc.integer({ min: 0, max: 600 }),
        (factor, x, y) => {
          const about = pointUnder(whole, SIZE, x, y);
          const near = zoomed(whole, whole, factor, about);
          expect(near.unit).toBeLessThan(whole.unit);
          const after = pointUnder(near, SIZE, x, y);
          expect(Math.hypot(after.u - about.u, after.v - about.v)).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it('is never farther than the whole, nor beside the sheet', () => {
    const near = zoomed(whole, whole, 3, whole.middle);
    expect(zoomed(near, whole, 0.1, { u: 0, v: 0 })).toBe(whole);
    expect(moved(near, 1e6, -1e6, BOUNDS).middle).toEqual({ u: BOUNDS.left, v: BOUNDS.bottom });
  });
});

describe('fingers on a sheet', () => {
  const at = (x: number, y: number) => ({ x, y });

  it('press where they stay within the shake of a glove', () => {
    const [held] = handMove(handDown(EMPTY_HAND, 1, at(10, 10)), 1, at(14, 13));
    expect(handUp(held, 1)[1]).toEqual({ kind: 'press', at: at(10, 10) });
  });

  it('move it once they go farther, which is no press any more', () => {
    const [moving, deed] = handMove(handDown(EMPTY_HAND, 1, at(10, 10)), 1, at(40, 10));
    expect(deed).toEqual({ kind: 'move', dx: 30, dy: 0 });
    expect(handUp(moving, 1)[1]).toEqual({ kind: 'none' });
  });

  it('pull it apart with two, about their middle, and lift one by one without a press', () => {
    const two = handDown(handDown(EMPTY_HAND, 1, at(0, 0)), 2, at(100, 0));
    const [wider, deed] = handMove(two, 2, at(200, 0));
    expect(deed).toEqual({ kind: 'pinch', factor: 2, about: at(100, 0) });
    const [one, first] = handUp(wider, 1);
    expect([first, handUp(one, 2)[1]]).toEqual([{ kind: 'none' }, { kind: 'none' }]);
  });
});
