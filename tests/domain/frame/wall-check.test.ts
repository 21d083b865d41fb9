import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Axis } from '#domain/frame/set-out';
import { ROLES, wallCheck, type WallMember } from '#domain/frame/wall-check';
import { WALL_CHECK_CAUTION, WALL_RULE_SETS, WALL_RULES, type WallRule } from '#domain/frame/wall-rules';
import type { Zone } from '#domain/frame/zone';
import { KINDS } from '#domain/lexicon/kinds';
import { axisBetween, BAY, someReader } from '../../support/some-grid.ts';

type Wall = Extract<Zone, { shape: 'wall' }>;
const WALL: Wall = {
  shape: 'wall',
  family: 'first',
  line: 'い',
  from: '一',
  to: '三',
  bottom: 450,
  top: 3000,
  face: 'both',
  over: 'between-posts',
};
const ACROSS: Wall = { ...WALL, family: 'second', line: '一', from: 'い', to: 'は' };

type Section = readonly [number, number];
interface Piece extends WallMember {
  readonly kind: string;
}
let made = 0;
const piece = (kind: string, axis: Axis | null): Piece => ({ mark: `${kind}-${made++}`, kind, axis });
const lying = (kind: string, z: number, section: Section = [15, 105], from = 0, to = 2 * BAY) =>
  piece(kind, axisBetween([0, from, z], [0, to, z], section));
const standing = (kind: string, y: number, section: Section) =>
  piece(kind, axisBetween([0, y, 450], [0, y, 3000], section));
const assuming = (one: Piece, ...assumed: Axis['assumed']): Piece => ({
  ...one,
  axis: one.axis && { ...one.axis, assumed },
});
const rails = (heights: readonly number[], section: Section = [15, 105]) =>
  heights.map((z) => lying('nuki', z, section));

function check(pieces: readonly Piece[], zone = WALL) {
  const kinds = new Map(pieces.map(({ mark, kind }) => [mark, kind]));
  const read = wallCheck(zone, pieces, (mark) => kinds.get(mark) ?? null, someReader);
  if (!read.ok) throw new Error(read.problem.reason);
  return read;
}
const result = (rule: WallRule, pieces: readonly Piece[], zone = WALL) => {
  const found = check(pieces, zone).results.find((one) => one.rule === rule);
  if (!found) throw new Error(rule);
  return found;
};
const told = (rule: WallRule, pieces: readonly Piece[], zone = WALL) => {
  const { measured, verdict, because } = result(rule, pieces, zone);
  return because ? [measured, verdict, because] : [measured, verdict];
};
const marks = (pieces: readonly Piece[]) => pieces.map(({ mark }) => mark);

// Figures: Notification 1100 of the Ministry of Construction (Japan), 1 June 1981, as amended by Notification 1543 of
// 9 December 2003; read in quotations and summaries of the text: rails ≥ 15 × 100 mm, ≤ 910 mm apart, ≥ 3 pieces;
// lath carriers ≥ 20 mm split, ≥ 12 mm round; lath ≥ 20 mm, ≤ 45 mm apart.
test('the rule set says where it is from, what of it is unconfirmed, and what it is not', () => {
  const { ruleSet, caution, results } = check([]);
  expect(ruleSet).toBe(WALL_RULE_SETS[0]);
  expect(`${ruleSet.source}, ${ruleSet.edition}`).toMatch(/1100.*1 June 1981.*1543.*9 December 2003/u);
  expect([ruleSet.until, ruleSet.unconfirmed.length > 0]).toEqual(['2025-04-01', true]);
  expect(caution).toBe(WALL_CHECK_CAUTION);
  expect(caution).toMatch(/never an approval/u);
  expect(results.map(({ rule, figure: { limit } }) => [rule, limit])).toEqual([
    ['rail-thickness', 15],
    ['rail-width', 100],
    ['rail-spacing', 910],
    ['rail-count', 3],
    ['carrier-size', 20],
    ['lath-size', 20],
    ['lath-spacing', 45],
  ]);
  expect(ruleSet.roundCarrier.limit).toBe(12);
});

test('its kinds are the lexicon’s', () => {
  const known = new Set(KINDS.map(({ id }) => id));
  expect(Object.keys(ROLES).filter((id) => !known.has(id))).toEqual([]);
});

describe('a wall of which the schedule says nothing', () => {
  it('cannot be told', () => {
    for (const rule of WALL_RULES)
      expect(told(rule, [])).toEqual([null, 'cannot be told', 'none-in-schedule']);
  });
  it('nor by what is of another kind, lies elsewhere, only crosses or ends in it', () => {
    const others = [
      lying('hari', 900),
      lying('nuki', 4000),
      piece('nuki', axisBetween([BAY, 0, 900], [BAY, 2 * BAY, 900])),
      piece('nuki', axisBetween([-BAY, BAY, 900], [BAY, BAY, 900])),
      piece('nuki', axisBetween([0, BAY, 900], [BAY, BAY, 900])),
      piece('nuki', axisBetween([0, 2 * BAY, 900], [0, 5 * BAY, 900])),
    ];
    expect(told('rail-count', others)).toEqual([null, 'cannot be told', 'none-in-schedule']);
  });
  it('is refused where its zone cannot be', () =>
    expect(wallCheck({ ...WALL, line: 'x' }, [], () => null, someReader)).toEqual({
      ok: false,
      problem: { reason: 'unknown-line', field: 'line' },
    }));
});

describe('rails', () => {
  it('as published, of all five kinds', () => {
    const all = ['nuki', 'jinuki', 'koshinuki', 'uchinorinuki', 'tenjonuki'].map((kind, i) =>
      lying(kind, 600 + i * 500),
    );
    expect(told('rail-count', all)).toEqual([5, 'as published']);
    expect(told('rail-spacing', all)).toEqual([500, 'as published']);
    expect(told('rail-thickness', all)).toEqual([15, 'as published']);
    expect(told('rail-width', all)).toEqual([105, 'as published']);
    expect(result('rail-count', all).looked).toEqual(marks(all));
  });
  it('of either family of lines', () => {
    const across = [700, 1500, 2300].map((z) =>
      piece('nuki', axisBetween([0, 0, z], [2 * BAY, 0, z], [15, 105])),
    );
    expect([told('rail-count', across, ACROSS), told('rail-spacing', across, ACROSS)]).toEqual([
      [3, 'as published'],
      [800, 'as published'],
    ]);
    expect(told('rail-count', across, WALL)[1]).toBe('cannot be told');
  });
  it('too thin or too narrow are named, whichever way round the section is stated', () => {
    const pieces = [
      lying('nuki', 700, [105, 15]),
      lying('nuki', 1500, [14.9, 99.9]),
      lying('nuki', 2300, [15, 100]),
    ];
    expect(told('rail-thickness', pieces)).toEqual([14.9, 'differs']);
    expect(result('rail-width', pieces)).toMatchObject({
      measured: 99.9,
      verdict: 'differs',
      differing: [pieces[1]?.mark],
    });
    expect(told('rail-width', [pieces[0]!, pieces[2]!])).toEqual([100, 'as published']);
  });
  it('are counted in the bay that has fewest', () => {
    const two = [...rails([700, 1500]), lying('nuki', 2300, [15, 105], 0, BAY)];
    expect(told('rail-count', two)).toEqual([2, 'differs']);
    expect(told('rail-count', [...two, lying('nuki', 2300, [15, 105], BAY, 1.4 * BAY)])).toEqual([
      2,
      'differs',
    ]);
    expect(told('rail-count', [...two, lying('nuki', 2300, [15, 105], BAY, 2 * BAY)])).toEqual([
      3,
      'as published',
    ]);
  });
  it('are as far apart as in the bay where they are farthest', () => {
    const pieces = [...rails([700, 2300]), lying('nuki', 1500, [15, 105], 0, BAY)];
    expect(told('rail-spacing', pieces)).toEqual([1600, 'differs']);
    expect(result('rail-spacing', pieces).differing).toEqual(marks(pieces.slice(0, 2)));
  });
  it('at the limit are within it, between edges alone is a matter of reading', () => {
    const apart = (mm: number) => told('rail-spacing', rails([700, 700 + mm]));
    expect(apart(910)).toEqual([910, 'as published']);
    expect(apart(910.1)).toEqual([910.1, 'cannot be told', 'reading']);
    expect(apart(1015)).toEqual([1015, 'cannot be told', 'reading']);
    expect(apart(1015.1)).toEqual([1015.1, 'differs']);
  });
  it('of one alone are no distance', () =>
    expect(told('rail-spacing', rails([700]))).toEqual([null, 'cannot be told', 'place-unknown']));
});

describe('what the schedule leaves unsaid', () => {
  const three = rails([700, 1500, 2300]);
  it('is no measurement: a section that is only usual', () => {
    const pieces = three.map((one) => assuming(one, 'section'));
    expect(told('rail-thickness', pieces)).toEqual([null, 'cannot be told', 'section-assumed']);
    expect(told('rail-thickness', [...pieces, lying('nuki', 2700)])).toEqual([
      15,
      'cannot be told',
      'section-assumed',
    ]);
    expect(told('rail-thickness', [...pieces, lying('nuki', 2700, [12, 90])])).toEqual([12, 'differs']);
    expect(told('rail-spacing', pieces)).toEqual([800, 'as published']);
    expect(told('rail-spacing', [pieces[0]!, pieces[2]!])).toEqual([
      1600,
      'cannot be told',
      'section-assumed',
    ]);
  });
  it('is no height: rails of this storey are counted and have no distance', () => {
    const low = [0, 1, 2].map(() => assuming(lying('nuki', 450), 'base'));
    expect(told('rail-count', low, { ...WALL, bottom: 500 })).toEqual([3, 'as published']);
    expect(told('rail-thickness', low)).toEqual([15, 'as published']);
    expect(told('rail-spacing', low)).toEqual([null, 'cannot be told', 'place-unknown']);
    expect(told('rail-count', low, { ...WALL, bottom: 3300, top: 5900 })[1]).toBe('cannot be told');
    const upper = [0, 1, 2].map(() => assuming(lying('nuki', 3250), 'base'));
    expect(told('rail-count', upper)[0]).toBeNull();
  });
  it('is no place: a rail that may be this wall’s makes sure only what it cannot change', () => {
    const lost = piece('nuki', null);
    expect(told('rail-count', [...three, lost])).toEqual([3, 'as published']);
    expect(told('rail-count', [...three.slice(1), lost])).toEqual([2, 'cannot be told', 'place-unknown']);
    expect(told('rail-spacing', [...three, lost])).toEqual([800, 'cannot be told', 'place-unknown']);
    expect(told('rail-thickness', [...three, lost])).toEqual([15, 'cannot be told', 'place-unknown']);
    expect(told('rail-thickness', [...rails([700], [12, 105]), lost])).toEqual([12, 'differs']);
    expect(told('lath-spacing', [lost])).toEqual([null, 'cannot be told', 'none-in-schedule']);
  });
});

describe('carriers and lath', () => {
  it('split ones by their width, round ones by their diameter', () => {
    const size = (...section: [number, number]) =>
      told('carrier-size', [standing('mawatashidake', 300, section)]);
    expect(size(20, 8)).toEqual([20, 'as published']);
    expect(size(8, 20)).toEqual([20, 'as published']);
    expect(size(19, 8)).toEqual([19, 'differs']);
    expect(size(12, 12)).toEqual([12, 'as published']);
    expect(size(11.9, 11.9)).toEqual([11.9, 'differs']);
    // The worst is the one that falls shortest of its own figure.
    const both = [standing('mawatashidake', 300, [14, 14]), standing('mawatashidake', 600, [19, 8])];
    expect(result('carrier-size', both)).toMatchObject({
      measured: 19,
      figure: { limit: 20 },
      differing: [both[1]?.mark],
    });
  });
  const row = (apart: number, section: Section = [8, 20]) =>
    Array.from({ length: 10 }, (_, i) => standing('komai', 300 + i * apart, section));
  it('lath is 45 apart or nearer; between edges alone is a matter of reading', () => {
    expect(told('lath-spacing', row(45))).toEqual([45, 'as published']);
    expect(told('lath-spacing', row(46))).toEqual([46, 'cannot be told', 'reading']);
    expect(told('lath-spacing', row(65))).toEqual([65, 'cannot be told', 'reading']);
    expect(told('lath-spacing', row(66))).toEqual([66, 'differs']);
    expect(told('lath-size', row(45, [8, 19]))).toEqual([19, 'differs']);
  });
  it('lying lath is measured as well, and a post between two bays is no gap', () => {
    const level = Array.from({ length: 5 }, (_, i) => lying('komai', 700 + i * 80, [8, 20]));
    expect(told('lath-spacing', level)).toEqual([80, 'differs']);
    const twoBays = [300, 340, BAY + 300, BAY + 340].map((y) => standing('komai', y, [8, 20]));
    expect(told('lath-spacing', twoBays)).toEqual([40, 'as published']);
  });
});

// Brute force over rails that run through the whole wall: sort, subtract, compare.
test('spacing and count of through rails in any order', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: 450, max: 3000 }), { minLength: 2, maxLength: 8 }),
      (heights) => {
        const sorted = [...heights].sort((a, b) => a - b);
        const widest = Math.max(...sorted.slice(1).map((z, i) => z - (sorted[i] ?? 0)));
        const pieces = rails(heights);
        expect(told('rail-count', pieces)).toEqual([
          heights.length,
          heights.length >= 3 ? 'as published' : 'differs',
        ]);
        expect(told('rail-spacing', pieces).slice(0, 2)).toEqual([
          widest,
          widest <= 910 ? 'as published' : widest - 105 > 910 ? 'differs' : 'cannot be told',
        ]);
      },
    ),
    { numRuns: 300 },
  );
});
