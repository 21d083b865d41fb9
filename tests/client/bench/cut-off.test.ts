import { expect, test } from 'vitest';
import { isCutOff } from '../../../client/screens/bench/cut-off.ts';

const box = (x: number, y: number, w: number, h: number) => ({ shape: 'rectangle', x, y, w, h }) as const;

test.each([
  ['a rail that ends within the picture', box(0.05, 0.4, 0.9, 0.05), false],
  ['a rail out of the left edge', box(0.01, 0.4, 0.5, 0.05), true],
  ['a rail out of the right edge', box(0.4, 0.4, 0.59, 0.05), true],
  ['a rail along the upper edge, with both ends in it', box(0.1, 0, 0.8, 0.05), false],
  ['a beam that runs away from the camera, out of the lower edge', box(0.4, 0.5, 0.1, 0.5), true],
  ['a beam that runs away and ends before', box(0.4, 0.2, 0.1, 0.7), false],
] as const)('%s: %o', (_, region, is) => {
  expect(isCutOff(region, 0.75)).toBe(is);
});

test('which way a region is long goes by the picture, not by its shares: 0.3 of 1600 px, 0.35 of 1200 px', () => {
  const region = box(0, 0.6, 0.3, 0.35);
  expect(isCutOff(region, 0.75)).toBe(true);
  // On an upright picture it is higher than wide, and its upper and lower ends lie within.
  expect(isCutOff(region, 1.25)).toBe(false);
});
