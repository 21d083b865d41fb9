import { expect, test } from 'vitest';
import { looksOf } from '#domain/record/look';
import type { Mm } from '#domain/frame/length';
import { pointAt, someGrid } from '../../support/some-grid.ts';

const grid = someGrid(4000, 3);
const eye = pointAt(1000, 6000, 1950);

test('one looks towards a line before one, never one behind, to most first', () => {
  // Bays of 4 m: what is seen at 1.9 m is nearer to the line behind.
  expect(looksOf(eye, [[1900, 6000, 1500]], grid)).toEqual([{ family: 'first', line: 'ろ' }]);
  expect(looksOf(eye, [[0, 6000, 1500]], grid)).toEqual([{ family: 'first', line: 'い' }]);
  expect(
    looksOf(
      eye,
      [
        [1000, 4000, 1500],
        [0, 6000, 1500],
        [1000, 4100, 900],
      ],
      grid,
    ),
  ).toEqual([
    { family: 'second', line: '二' },
    { family: 'first', line: 'い' },
  ]);
});

test('up and down count where that is steeper than 60°: the foot of a wall lies towards its line', () => {
  // 1.2 m before one and 1.5 m down: 51°.
  expect(looksOf(eye, [[1000, 4800, 450]], grid)).toEqual([{ family: 'second', line: '二' }]);
  expect(
    looksOf(
      eye,
      [
        [1100, 6000, 3250],
        [1000, 6100, 450],
      ],
      grid,
    ),
  ).toEqual(['up', 'down']);
});

test('where no line is before one the nearest is named', () => {
  const only = { ...grid, first: { ...grid.first, lines: [{ label: 'い', at: 0 as Mm }] } };
  expect(looksOf(eye, [[3000, 6000, 1500]], only)).toEqual([{ family: 'first', line: 'い' }]);
});
