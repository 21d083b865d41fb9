import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loupePlace } from '../../../client/screens/bench/loupe.ts';

/** As drawn: see the style of .bench-loupe. */
const SIZE = 132;
const STAGE = { width: 350, height: 430 };

test('the loupe never lies under the finger, and never beyond the left, right or upper edge', () => {
  const across = fc.integer({ min: 0, max: STAGE.width });
  const down = fc.integer({ min: 0, max: STAGE.height });
  fc.assert(
    fc.property(across, down, (x, y) => {
      const [left, top] = loupePlace([x, y], STAGE.width);
      // Half a thumb around the middle of the finger: about 20 px by common practice of touch targets of 44.
      const isUnder = left < x + 20 && left + SIZE > x - 20 && top < y + 20 && top + SIZE > y - 20;
      expect(isUnder).toBe(false);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + SIZE).toBeLessThanOrEqual(STAGE.width);
      expect(top).toBeGreaterThanOrEqual(0);
    }),
  );
});
