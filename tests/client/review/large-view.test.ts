import { expect, test } from 'vitest';
import { LARGEST, largerBy, middleOf, zoomFor } from '../../../client/screens/review/large-view.ts';

const box = (x: number, y: number, w: number, h: number) => ({ shape: 'rectangle' as const, x, y, w, h });

test('a region takes half of the frame at first, whichever way it is long', () => {
  expect(zoomFor(box(0, 0, 0.25, 0.1))).toBeCloseTo(2);
  expect(zoomFor(box(0, 0, 0.05, 0.25))).toBeCloseTo(2);
});

test('nothing is smaller than its frame, or larger than a preview can show', () => {
  expect(zoomFor(box(0, 0, 1, 1))).toBe(1);
  expect(zoomFor(box(0.5, 0.5, 0.001, 0.001))).toBe(LARGEST);
  expect(largerBy(2, 1 / 8)).toBe(1);
});

test('it is about the middle of the region', () => {
  expect(middleOf(box(0.2, 0.4, 0.4, 0.2))).toMatchObject({
    x: expect.closeTo(0.4) as number,
    y: expect.closeTo(0.5) as number,
  });
});
