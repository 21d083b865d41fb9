import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Grid } from '#domain/frame/grid';
import { gridProblem } from '#domain/frame/grid-problem';
import { gridReader } from '#domain/frame/grid-reader';
import type { Mm } from '#domain/frame/length';
import { IROHA } from '#domain/frame/mark-order';

const BAY = 1820;
const lines = (labels: readonly string[], bay = BAY) =>
  labels.map((label, i) => ({ label, at: (i * bay) as Mm }));
const gridOf = (first: readonly string[], second: readonly string[]): Grid => ({
  first: { lines: lines(first), runs: 'leftward' },
  second: { lines: lines(second), runs: 'downward' },
  levels: [{ label: '1F', height: 450 as Mm }],
});
const KANJI = ['一', '二', '三', '四', '五', '六', '七', '八', '九', '十', '十一', '十二'];
const grid = gridOf([...IROHA.slice(0, 6)], KANJI);
const reader = gridReader(grid);

const read = (text: string, of = reader) => {
  const crossing = of.crossing(text);
  return crossing.ok
    ? [crossing.value.mark, crossing.value.x / BAY, crossing.value.y / BAY]
    : crossing.problem;
};

describe('a crossing as people write it', () => {
  // い三, "はの2", "は又の2" (kenchikuyogo.com); 又四 between 四 and 五, 又 before or behind (kenchikushiblog);
  // the other forms: common practice.
  it.each([
    ['い三', 'い三', 0, 2],
    ['い-3', 'い三', 0, 2],
    ['いの三', 'い三', 0, 2],
    ['イ三', 'い三', 0, 2],
    ['ｲ３', 'い三', 0, 2],
    ['　い　３　', 'い三', 0, 2],
    ['はの2', 'は二', 2, 1],
    ['は又の2', '又は二', 2.5, 1],
    ['又は2', '又は二', 2.5, 1],
    ['は又四', 'は又四', 2, 3.5],
    ['は四又', 'は又四', 2, 3.5],
    ['又い又三', '又い又三', 0.5, 2.5],
    ['ろ十一', 'ろ十一', 1, 10],
    ['ろ11', 'ろ十一', 1, 10],
    ['三い', 'い三', 0, 2],
  ])('%s is %s', (text, mark, x, y) => expect(read(text)).toEqual([mark, x, y]));

  it.each(['', '三', 'い', 'い三柱', 'す三', 'い13', 'へ又', '又へ三', 'い又十二', 'い三四五'])(
    '%s is no crossing of this grid',
    (text) => expect(read(text)).toBe('unknown'),
  );

  it('keeps letters, numbers on both sides and labels of the crew apart', () => {
    expect(read('b12', gridReader(gridOf(['A', 'B'], ['1', '12'])))).toEqual(['B12', 1, 1]);
    expect(read('1-2', gridReader(gridOf(['1', '2'], ['1', '2'])))).toEqual(['1-2', 0, 1]);
    expect(read('北-中', gridReader(gridOf(['北', '南'], ['東', '中', '西'])))).toEqual(['北-中', 0, 1]);
    expect(read('x2 y1', gridReader(gridOf(['X1', 'X2'], ['Y1', 'Y2'])))).toEqual(['X2Y1', 1, 0]);
    expect(read('B又3', gridReader(gridOf(['A', 'B'], ['1', '2', '3', '4'])))).toEqual(['B又3', 1, 2.5]);
  });

  it('says where a mark could be two crossings', () => {
    // あ1 + 2 or あ + 12 with lines 1-2 written apart.
    expect(read('1-2-3', gridReader(gridOf(['1', '1-2'], ['3', '2-3'])))).toBe('ambiguous');
  });

  const label = fc.constantFrom(...IROHA, ...KANJI, 'A', 'B', 'x1', 'x2', '北', '南', '1', '2', '13', '軒');
  const labels = fc.uniqueArray(label, { minLength: 1, maxLength: 6 });

  it('reads what it writes, for every place of any grid', () => {
    fc.assert(
      fc.property(labels, labels, (first, second) => {
        const any = gridOf(first, second);
        fc.pre(gridProblem(any) === null);
        const of = gridReader(any);
        for (const a of of.places('first'))
          for (const b of of.places('second')) {
            const mark = of.mark(a, b);
            expect(of.crossing(mark)).toEqual({ ok: true, value: { x: a.at, y: b.at, mark } });
          }
      }),
      { numRuns: 400 },
    );
  });
});

describe('a line', () => {
  it.each([
    ['ほ通り', 'first', 'ほ'],
    ['ほ通', 'first', 'ほ'],
    ['ホ', 'first', 'ほ'],
    ['又ほ', 'first', '又ほ'],
    ['3', 'second', '三'],
    ['三通り', 'second', '三'],
    ['3又', 'second', '又三'],
  ] as const)('%s', (text, family, label) =>
    expect(reader.line(text, family)).toMatchObject({ ok: true, value: { label } }),
  );
  it('of the other family is unknown', () => expect(reader.line('ほ', 'second').ok).toBe(false));
});

describe('a grid that cannot be', () => {
  const problem = (change: Partial<Grid>) => gridProblem({ ...grid, ...change })?.reason ?? null;
  const second = (...ls: [string, number][]) => ({
    second: { runs: 'downward' as const, lines: ls.map(([label, at]) => ({ label, at: at as Mm })) },
  });
  it('is said', () => {
    expect(gridProblem(grid)).toBeNull();
    expect(problem(second())).toBe('no-lines');
    expect(problem(second(['一', 0], ['1', 1820]))).toBe('label-repeated');
    expect(problem(second(['一', 0], [' ', 1820]))).toBe('label-empty');
    expect(problem(second(['二', 0], ['一', 0]))).toBe('not-ascending');
    expect(problem(second(['一', 0], ['二', NaN]))).toBe('not-ascending');
    expect(problem(second(['一', 0], ['二又', 910]))).toBe('label-unreadable');
    expect(
      problem({
        levels: [
          { label: '1F', height: 0 as Mm },
          { label: '１ｆ', height: 1 as Mm },
        ],
      }),
    ).toBe('label-repeated');
  });
});
