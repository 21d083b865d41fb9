import { describe, expect, test } from 'vitest';
import { guessStretch, linesAlong } from '../../../client/screens/bench/shown-stretch.ts';
import { axisBetween, someReader } from '../../support/some-grid.ts';

// い to へ and 一 to 六, 1820 mm apart.
const rail = axisBetween([0, 0, 1800], [0, 9100, 1800]);
const post = (line: number, off = 0) => axisBetween([off, line * 1820, 450], [off, line * 1820, 3250]);

describe('the part of a member that a photo shows', () => {
  test('can be any between the lines that the member reaches', () => {
    expect(linesAlong(rail, someReader, false).map(({ label }) => label)).toEqual([
      '一',
      '二',
      '三',
      '四',
      '五',
      '六',
    ]);
    expect(linesAlong(rail, someReader).map(({ label }) => label)).toContain('又三');
    const bay = axisBetween([0, 0, 1800], [0, 1820, 1800]);
    expect([linesAlong(bay, someReader), linesAlong(post(1), someReader)]).toEqual([[], []]);
  });
  test('is guessed from the outermost posts on it', () => {
    expect(guessStretch(rail, [post(3), post(1), post(2)], someReader)).toEqual({ from: '二', to: '四' });
    // A post of another line stands at the same place along this one.
    expect(guessStretch(rail, [post(1, 1820), post(2)], someReader)).toEqual({ from: '二', to: '三' });
  });
  test('is not guessed from one post, from rails, or for what stands', () => {
    expect(guessStretch(rail, [post(3)], someReader)).toBeNull();
    expect(guessStretch(rail, [rail, rail], someReader)).toBeNull();
    expect(guessStretch(post(0), [post(1), post(2)], someReader)).toBeNull();
    expect(guessStretch(rail, [post(1.5), post(1)], someReader)).toBeNull();
  });
});
