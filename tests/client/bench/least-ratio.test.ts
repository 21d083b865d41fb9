import { expect, test } from 'vitest';
import { leastRatio } from '../../../client/screens/bench/least-ratio.ts';

/** As the bench has them: two that are made, and the original. */
const LEVELS = [{ width: 320 }, { width: 1600 }, { width: 4032 }];

/** The picture that the viewer shows: the largest that is not below the least ratio, else the smallest. */
function pictureAt(css: number, home: number, density: number, levels = LEVELS): number {
  const least = leastRatio(levels, home, density);
  const [smallest] = levels;
  return (levels.findLast(({ width }) => (css * density) / width >= least) ?? smallest)?.width ?? NaN;
}

test.each([
  ['a phone', 350, 2, 1600],
  ['a small phone', 280, 3, 1600],
  ['a desk', 844, 1, 1600],
  ['a wide desk', 1500, 1, 1600],
  ['a dense screen', 900, 2, 1600],
  ['a large dense screen', 1500, 2, 4032],
  ['a small window of low density', 300, 1, 320],
])('the whole photo on %s is sharp and costs no more than that', (_, home, density, picture) => {
  expect(pictureAt(home, home, density)).toBe(picture);
});

test.each([
  [350, 2],
  [844, 1],
  [1500, 1],
])('nearer than that the original comes: from %i px at density %i', (home, density) => {
  expect(pictureAt(2016 / density, home, density)).toBe(4032);
  // Not for a quarter more.
  expect(pictureAt(home * 1.25, home, density)).toBe(1600);
});

test('a telephone that is turned keeps the sharp one: 4:3, from 400 px lying to 350 px upright', () => {
  expect(pictureAt(350, 400, 2)).toBe(1600);
});

test('one picture alone, or none, is no trouble', () => {
  expect(pictureAt(350, 350, 2, [{ width: 320 }])).toBe(320);
  expect(leastRatio([], 350, 2)).toBe(0.5);
});
