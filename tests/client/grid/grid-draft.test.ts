import { describe, expect, test } from 'vitest';
import {
  EMPTY_GRID,
  fieldOf,
  gridDraft,
  labelsOf,
  readGrid,
  type GridDraft,
} from '../../../client/screens/grid/grid-draft.ts';

const typed = (more: Partial<GridDraft> = {}): GridDraft => ({
  ...EMPTY_GRID,
  first: { labels: 'い ろ、は', bays: '6尺', runs: 'leftward' },
  second: { labels: '一 二 三 四', bays: '1820 910 1.82m', runs: 'downward' },
  levels: '1F 450\n2F: 3,200\n',
  ...more,
});

describe('a grid as it is typed', () => {
  test('is read, and comes out as it went in', () => {
    const read = readGrid(typed());
    expect(read).toMatchObject({
      grid: {
        // 6 shaku = 20000/11 mm.
        first: { lines: [{ label: 'い', at: 0 }, { at: 1818.182 }, { label: 'は', at: 3636.364 }] },
        second: { lines: [{ at: 0 }, { at: 1820 }, { at: 2730 }, { at: 4550 }] },
        levels: [
          { label: '1F', height: 450 },
          { label: '2F', height: 3200 },
        ],
      },
    });
    if ('grid' in read) expect(readGrid(gridDraft(read.grid))).toEqual(read);
  });
  test.each([
    [{ first: { labels: '', bays: '', runs: 'leftward' as const } }, 'no-lines', 'first'],
    [{ first: { labels: 'い ろ は', bays: '', runs: 'leftward' as const } }, 'count', 'first'],
    [{ first: { labels: 'い ろ', bays: 'wide', runs: 'leftward' as const } }, 'not-a-length', 'first'],
    [{ second: { labels: '3 三', bays: '910', runs: 'downward' as const } }, 'label-repeated', 'second'],
    [{ levels: '1F' }, 'not-a-length', 'levels'],
    [{ levels: '1F 450\n2F 300' }, 'not-ascending', 'levels'],
  ])('says what is wrong %#', (more, reason, family) =>
    expect(readGrid(typed(more))).toMatchObject({ wrong: { reason, family } }),
  );
  const first = (labels: string, bays: string) => ({ labels, bays, runs: 'leftward' as const });
  test.each([
    [first('い ろ', 'x'), 'not-a-length', 'bays'],
    [first('い ろ は', '910 0'), 'bay-too-short', 'bays'],
    [first('い ろ は', '-910'), 'bay-too-short', 'bays'],
    [first('い ろ は', '910 910 910'), 'count', 'bays'],
    [first('い ろ', '0.4'), 'not-ascending', 'bays'],
    [first('い い', '910'), 'label-repeated', 'labels'],
    [first('', '六尺'), 'no-lines', 'labels'],
  ])('says it at the field that is wrong %#', (draft, reason, field) => {
    const read = readGrid(typed({ first: draft }));
    expect(read).toMatchObject({ wrong: { reason, family: 'first' } });
    if ('wrong' in read) expect(fieldOf(read.wrong)).toBe(field);
  });
  test('takes bays in kanji', () => {
    // A ken is six shaku, 20000/11 mm; half of it is 10000/11.
    const read = readGrid(typed({ first: first('い ろ は', '六尺 半間') }));
    expect(read).toMatchObject({
      grid: { first: { lines: [{ at: 0 }, { at: 1818.182 }, { at: 2727.273 }] } },
    });
  });
  test('may be filled with usual labels', () => {
    expect(labelsOf('iroha', 4)).toBe('い ろ は に');
    expect(labelsOf('kanji', 21)).toMatch(/^一 二 .* 九 十 十一 .* 十九 二十 二十一$/);
    expect(labelsOf('letters', 27)).toMatch(/^A B .* Z AA$/);
  });
});
