import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { DOT, planOfWalk } from '../../../client/screens/shots/plan-of-walk.ts';
import { lookWords, whereWords } from '../../../client/screens/shots/place-words.ts';
import { spreadApart } from '../../../client/screens/shots/spread-apart.ts';
import { someGrid } from '../../support/some-grid.ts';
import { wordsOf } from '../words.ts';
import { placeOf, shot } from './some-walk.ts';

const grid = someGrid(1820, 3);
const towards = (family: 'first' | 'second', line: string) => ({ look: { family, line }, shots: [] });

describe('the plan of a walk', () => {
  // い to は leftward, 一 to 三 downward: いの一 in the upper right (common practice).
  const plan = planOfWalk(grid, [
    {
      number: 4,
      place: placeOf({
        turns: [
          { look: { family: 'first', line: 'い' }, shots: [shot('rail', [[0, 1820]])] },
          towards('first', 'は'),
          towards('second', '一'),
          towards('second', '三'),
        ],
      }),
    },
    { number: 5, place: placeOf({ eye: { x: 2730, y: 4640 }, turns: [{ look: 'up', shots: [] }] }) },
  ]);
  const [spot, outside] = plan.spots;
  it('runs as the lines are counted', () => {
    const [i, ro, ha] = plan.upright.map(({ x }) => x) as [number, number, number];
    expect(i - ro).toBeCloseTo(ro - ha, 6);
    expect(i).toBeGreaterThan(ha);
    const [one, , three] = plan.level.map(({ y }) => y) as [number, number, number];
    expect(three).toBeGreaterThan(one);
    expect(spot?.x).toBeCloseTo((i + ro) / 2, 6);
  });
  it('points to the line that is looked at', () => {
    expect(spot).toMatchObject({ number: 4, turns: [0, 180, 270, 90], hasRing: false });
    expect(outside).toMatchObject({ number: 5, turns: [], hasRing: true });
  });
  it('has room for whoever stands outside of the house', () => {
    for (const { x, y } of plan.spots) {
      expect(x).toBeGreaterThan(DOT);
      expect(y).toBeGreaterThan(DOT);
      expect(x).toBeLessThan(plan.width - DOT);
      expect(y).toBeLessThan(plan.height - DOT);
    }
  });
  it('draws what is missing where it lies', () => {
    const [, , upright] = [0, 0, plan.upright[0]?.x ?? NaN];
    expect(plan.missing).toHaveLength(1);
    expect(plan.missing[0]).toMatchObject({ from: { x: upright }, to: { x: upright } });
  });
  it('draws what is open only, and knows the places that are done', () => {
    const left = planOfWalk(
      grid,
      [1, 2].map((number) => ({
        number,
        place: placeOf({ turns: [{ look: 'up', shots: [shot(`rail ${number}`, [[0, 1820]])] }] }),
      })),
      ({ mark }) => mark === 'rail 2',
    );
    expect(left.missing).toHaveLength(1);
    expect(left.spots.map(({ isDone }) => isDone)).toEqual([true, false]);
  });
  it('turns round where lines are counted the other way', () => {
    const turned = planOfWalk(
      { ...grid, first: { ...grid.first, runs: 'rightward' }, second: { ...grid.second, runs: 'upward' } },
      [{ number: 1, place: placeOf({ turns: [towards('first', 'い'), towards('second', '一')] }) }],
    );
    expect(turned.spots[0]?.turns).toEqual([180, 90]);
  });
});

test('numbers never lie over each other, and lonely ones stay', () => {
  const dot = fc.record({ x: fc.integer({ min: 0, max: 300 }), y: fc.integer({ min: 0, max: 300 }) });
  fc.assert(
    fc.property(fc.array(dot, { maxLength: 12 }), (dots) => {
      const moved = spreadApart(dots, 28);
      const apart = (all: readonly { x: number; y: number }[], i: number) =>
        Math.min(
          ...all.flatMap((one, j) =>
            i === j ? [] : Math.hypot(one.x - (all[i]?.x ?? 0), one.y - (all[i]?.y ?? 0)),
          ),
        );
      expect(moved).toHaveLength(dots.length);
      for (const i of dots.keys()) expect(apart(moved, i)).toBeGreaterThan(20);
      if (dots.every((_, i) => apart(dots, i) >= 28)) expect(moved).toEqual(dots);
    }),
  );
});

describe('where one stands', async () => {
  const [en, ja] = [await wordsOf('en'), await wordsOf('ja')];
  const before = { family: 'first', line: 'ろ', side: 'lower', outside: false } as const;
  it('is said by marks and lines', () => {
    expect(whereWords(en, placeOf(), grid)).toBe('In the bay between い一 and ろ二');
    expect(whereWords(en, placeOf({ before }), grid)).toMatch(/line ろ, .*on the side of い$/u);
    expect(whereWords(en, placeOf({ before: { ...before, side: 'higher' } }), grid)).toMatch(/side of は$/u);
    expect(whereWords(ja, placeOf({ before: { ...before, outside: true } }), grid)).toContain('外側');
  });
  it('says 通り once, also of a line that is called so', () => {
    expect(lookWords(ja, { family: 'first', line: 'い通り' })).toBe('い通りを向く');
    expect(lookWords(ja, { family: 'first', line: 'い' })).toBe('い通りを向く');
    expect(lookWords(en, 'up')).toBe('Look up');
  });
});
