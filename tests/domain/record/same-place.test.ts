import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isInside } from '#domain/frame/clip';
import type { Mm } from '#domain/frame/length';
import type { Zone } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import { gridReader } from '#domain/frame/grid-reader';
import { isHiddenAlike, isSamePlace, placeOf } from '#domain/record/same-place';

const BAY = 1820;
const line = (labels: string) => [...labels].map((label, i) => ({ label, at: (i * BAY) as Mm }));
const reader = gridReader({
  first: { lines: line('いろはに'), runs: 'leftward' },
  second: { lines: line('一二三四'), runs: 'downward' },
  levels: [],
});
const isOne = (a: Zone, b: Zone) => {
  const [one, other] = [placeOf(a, reader), placeOf(b, reader)];
  return one !== null && other !== null && isSamePlace(one, other);
};

type Of<Shape extends Zone['shape']> = Extract<Zone, { shape: Shape }>;
const wall = (more: Partial<Of<'wall'>> = {}): Zone => ({
  ...{ shape: 'wall', family: 'first', line: 'い', from: '一', to: '三', bottom: 450, top: 3250 },
  ...{ face: 'lower', over: 'between-posts', ...more },
});
const floor = (bottom: number, top: number, ...corners: string[]): Of<'flat'> => ({
  ...{ shape: 'flat', corners: corners.length > 0 ? corners : ['い一', 'は三'], bottom, top },
});
const roof = (more: Partial<Of<'slope'>> = {}): Of<'slope'> => ({
  ...{ shape: 'slope', family: 'second', eaves: '一', ridge: '二', from: 'い', to: 'は' },
  ...{ eavesHeight: 3250, ridgeHeight: 4000, below: 150, ...more },
});

describe('layers at one place', () => {
  it.each([
    ['the other face of a wall', wall(), wall({ face: 'higher', over: 'over-posts' }), true],
    ['a wall that goes on beside it', wall(), wall({ from: '三', to: '四' }), false],
    ['a wall that shares a bay', wall(), wall({ from: '二', to: '四' }), true],
    ['a wall said backwards', wall(), wall({ from: '三', to: '一' }), true],
    ['a wall on the next line', wall(), wall({ line: 'ろ' }), false],
    ['a wall across', wall(), wall({ family: 'second', line: '一', from: 'い', to: 'ろ' }), false],
    ['the wall above', wall(), wall({ bottom: 3250, top: 5900 }), false],
    ['joists on boards', floor(250, 470), floor(470, 530), true],
    ['a finished floor 600 mm above', floor(250, 470), floor(1070, 1085), true],
    ['a ceiling 601 mm above', floor(250, 470), floor(1071, 1085), false],
    ['the floor of the next room', floor(250, 470), floor(250, 470, 'は一', 'に三'), false],
    ['a floor that shares a bay', floor(250, 470), floor(250, 470, 'ろ二', 'に四'), true],
    [
      'the other half of a room cut aslant',
      floor(0, 9, 'い一', 'は一', 'い三'),
      floor(0, 9, 'は一', 'は三', 'い三'),
      false,
    ],
    ['battens on roof boards', roof(), roof({ eavesHeight: 3300, ridgeHeight: 4050, below: 50 }), true],
    ['the other slope', roof(), roof({ eaves: '三' }), false],
    ['the same slope, farther on', roof(), roof({ from: 'は', to: 'に' }), false],
    ['a wall and a floor', wall(), floor(450, 3250), false],
    ['a wall of which the grid knows no line', wall(), wall({ line: 'ん' }), false],
  ])('%s', (_, a, b, expected) => {
    expect(isOne(a, b)).toBe(expected);
    expect(isOne(b, a)).toBe(expected);
  });

  // Against points: of two floors at one height those overlap in which some point lies within both.
  it('are floors that have a point in common, seen from above', () => {
    const mark = fc
      .tuple(fc.constantFrom(...'いろはに'), fc.constantFrom(...'一二三四'))
      .map(([a, b]) => a + b);
    const corners = fc.oneof(fc.tuple(mark, mark), fc.tuple(mark, mark, mark));
    fc.assert(
      fc.property(corners, corners, (a, b) => {
        const bodies = [a, b].map((own) => zoneBody(floor(0, 10, ...own), reader));
        fc.pre(bodies.every(({ ok }) => ok));
        let isCommon = false;
        // No side of a polygon between crossings goes through these points.
        for (let x = 7; x < 3 * BAY; x += 61)
          for (let y = 13; y < 3 * BAY; y += 61)
            isCommon ||= bodies.every(
              (read) => read.ok && isInside({ x: x as Mm, y: y as Mm, z: 5 as Mm }, read.body),
            );
        expect(isOne(floor(0, 10, ...a), floor(0, 10, ...b))).toBe(isCommon);
      }),
      { numRuns: 300 },
    );
  });
});

describe('what an earlier layer hides', () => {
  const at = (kind: 'floor' | 'ceiling' | 'plaster' | 'roof-boards' | 'other', zone: Zone) => ({
    kind,
    zone,
  });
  it.each([
    ['a second coat', at('plaster', wall()), at('plaster', wall()), true],
    ['boards on the inside of a wall', at('plaster', wall()), at('other', wall()), true],
    ['a finished floor on boards', at('floor', floor(250, 470)), at('floor', floor(250, 500)), true],
    [
      'a ceiling under boards: it is seen from below',
      at('floor', floor(0, 9)),
      at('ceiling', floor(0, 9)),
      false,
    ],
    [
      'boards over a ceiling: they are seen from above',
      at('ceiling', floor(0, 9)),
      at('floor', floor(0, 9)),
      false,
    ],
    ['plaster over boards on a wall', at('other', wall()), at('plaster', wall()), true],
    ['services in the same zone', at('floor', floor(250, 470)), at('other', floor(250, 470)), true],
    ['services on boards', at('floor', floor(250, 470)), at('other', floor(250, 520)), true],
    ['services under boards', at('floor', floor(250, 470)), at('other', floor(200, 400)), false],
    ['insulation under a ceiling', at('ceiling', floor(250, 470)), at('other', floor(200, 470)), true],
    ['insulation over a ceiling', at('ceiling', floor(250, 470)), at('other', floor(300, 520)), false],
    ['boards over who knows what', at('other', floor(0, 9)), at('floor', floor(0, 9)), false],
    ['roofing on roof boards', at('roof-boards', roof()), at('other', roof({ eavesHeight: 3300 })), true],
    ['a ceiling under roof boards', at('roof-boards', roof()), at('ceiling', roof()), false],
  ])('%s', (_, earlier, later, expected) => expect(isHiddenAlike(earlier, later)).toBe(expected));
});
