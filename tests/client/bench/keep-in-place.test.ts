import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layerTransform } from '../../../client/screens/bench/keep-in-place.ts';
import type { View } from '../../../client/screens/bench/viewer.ts';

const view = fc.record<View>({
  x: fc.double({ min: -4000, max: 4000, noNaN: true }),
  y: fc.double({ min: -4000, max: 4000, noNaN: true }),
  width: fc.double({ min: 100, max: 8000, noNaN: true }),
});

/** Applies a CSS transform of translation, then scale, as CSS Transforms 1 composes them: from the right. */
function applied(css: string, [x, y]: readonly [number, number]): [number, number] {
  const [, dx, dy, scale] = /translate\((.+)px, (.+)px\) scale\((.+)\)/.exec(css) ?? [];
  return [Number(dx) + Number(scale) * x, Number(dy) + Number(scale) * y];
}

it('moves each point of the picture from where it was drawn to where it now lies', () => {
  const unit = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(view, view, unit, unit, (from, to, u, v) => {
      const drawn = [from.x + u * from.width, from.y + v * from.width] as const;
      const [x, y] = applied(layerTransform(from, to), drawn);
      expect(x).toBeCloseTo(to.x + u * to.width, 4);
      expect(y).toBeCloseTo(to.y + v * to.width, 4);
    }),
  );
});
