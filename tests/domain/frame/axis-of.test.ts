import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { axisOf, pointOn } from '#domain/frame/axis-of';
import { facesOf, isPlausibleDepth } from '#domain/frame/faces-of';
import { gridReader } from '#domain/frame/grid-reader';
import type { Mm } from '#domain/frame/length';
import { AXIS_PROBLEMS, type SetOut, type UsualLie } from '#domain/frame/set-out';
import { axisBetween, BAY, pointAt, someGrid, someReader } from '../../support/some-grid.ts';

const UNSAID: SetOut = { from: '', to: '', level: '', base: null, top: null, width: null, depth: null };
const POST: UsualLie = { lies: 'upright', section: [120, 120] };
const RAIL: UsualLie = { lies: 'level', section: [15, 105] };
const BEAM: UsualLie = { lies: 'level', section: [120, 240] };
const RAFTER: UsualLie = { lies: 'sloping', section: [45, 60] };
const ANY: UsualLie = { lies: 'none', section: null };

const read = (stated: Partial<SetOut>, usual = ANY, reader = someReader) =>
  axisOf({ ...UNSAID, ...stated }, usual, reader);
function axis(stated: Partial<SetOut>, usual = ANY, reader = someReader) {
  const found = read(stated, usual, reader);
  if (!found.ok) throw new Error(`${found.problem.reason} ${found.problem.field}`);
  return found.axis;
}
function problem(...args: Parameters<typeof read>) {
  const found = read(...args);
  return found.ok ? null : [found.problem.reason, found.problem.field];
}

describe('a post', () => {
  it('stands on its crossing from its level to the next', () => {
    expect(axis({ from: 'ろ三', level: '1F' }, POST)).toEqual({
      start: pointAt(BAY, 2 * BAY, 450),
      end: pointAt(BAY, 2 * BAY, 3250),
      length: 2800,
      width: 120,
      depth: 120,
      runs: 'upright',
      level: '1F',
      assumed: ['base', 'top', 'section'],
    });
  });
  it('stands on the lowest level where none is named', () =>
    expect(axis({ from: 'ろ三' }, POST)).toMatchObject({ start: { z: 450 }, end: { z: 3250 }, level: '1F' }));
  it('stands on a full-width level too', () =>
    expect(axis({ from: 'ろ三', level: '２ｆ' }, POST)).toMatchObject({ start: { z: 3250 }, level: '2F' }));
  it('counts its heights from its level, or from the datum without one', () => {
    expect(axis({ from: 'い一', level: '2F', base: 10, top: 900 }, POST)).toMatchObject({
      start: { z: 3260 },
      end: { z: 4150 },
      assumed: ['section'],
    });
    expect(axis({ from: 'い一', base: 3260, top: 4150 }, POST)).toMatchObject({
      start: { z: 3260 },
      end: { z: 4150 },
      level: '2F',
    });
  });
  it('let in below its level still reaches the next', () => {
    expect(axis({ from: 'い一', level: '1F', base: -60 }, POST)).toMatchObject({
      start: { z: 390 },
      end: { z: 3250 },
      assumed: ['top', 'section'],
    });
    expect(axis({ from: 'い一', base: 390 }, POST)).toMatchObject({ end: { z: 3250 }, level: '1F' });
  });
  it('stands on the level it stands on, however near the next is', () => {
    const grid = {
      ...someGrid(),
      levels: [
        { label: '縁', height: 300 as Mm },
        { label: '1F', height: 450 as Mm },
      ],
    };
    expect(axis({ from: 'い一' }, POST, gridReader(grid))).toMatchObject({ level: '縁', end: { z: 450 } });
  });
  it('with both ends at one crossing is one as well', () =>
    expect(axis({ from: 'い一', to: 'い 1', level: '1F' }, ANY).runs).toBe('upright'));
  it('may stand on half a bay', () =>
    expect(axis({ from: '又い三' }, POST).start).toEqual(pointAt(BAY / 2, 2 * BAY, 450)));
  it('that leans by a little is a post, and by more is a brace', () => {
    const lean = (top: number) => axis({ from: 'い一', to: 'ろ一', base: 0, top }, ANY).runs;
    // atan(21 000 / 1820) = 85.05°, atan(20 500 / 1820) = 84.93°
    expect([lean(21_000), lean(20_500)]).toEqual(['upright', 'sloping']);
  });
});

describe('a rail', () => {
  it('lies at its level, and at its base where one is stated', () => {
    expect(axis({ from: 'い一', to: 'へ一', level: '2F' }, RAIL)).toEqual({
      start: pointAt(0, 0, 3250),
      end: pointAt(5 * BAY, 0, 3250),
      length: 5 * BAY,
      width: 15,
      depth: 105,
      runs: 'level',
      level: '2F',
      assumed: ['base', 'section'],
    });
    expect(axis({ from: 'い一', to: 'へ一', level: '1F', base: 900 }, RAIL)).toMatchObject({
      start: { z: 1350 },
      end: { z: 1350 },
      assumed: ['section'],
    });
  });
  it('keeps the way it is stated', () =>
    expect(axis({ from: 'へ一', to: 'い一' }, RAIL)).toMatchObject({
      start: { x: 5 * BAY },
      end: { x: 0 },
    }));
  it('hung a little below a floor belongs to that floor', () => {
    expect(axis({ from: 'い一', to: 'ろ一', base: 2850 }, RAIL).level).toBe('2F');
    expect(axis({ from: 'い一', to: 'ろ一', base: 2849 }, RAIL).level).toBe('1F');
  });
  it('below all levels belongs to the lowest', () =>
    expect(axis({ from: 'い一', to: 'ろ一', base: -3000 }, RAIL).level).toBe('1F'));
  it('or whatever falls a little to drain is level, and by more slopes', () => {
    // tan 5° = 0.0875: 159 mm in a bay.
    const fall = (top: number) => axis({ from: 'い一', to: 'ろ一', base: 0, top }, ANY).runs;
    expect([fall(159), fall(160)]).toEqual(['level', 'sloping']);
  });
});

/** 下端 and 上端 of what lies are the faces of its section. Common practice of timber lists. */
describe('a level piece with underside and top', () => {
  const lie = { from: 'い一', to: 'へ一', level: '2F' };
  it('lies midway between the two, as deep as they are apart', () => {
    expect(axis({ ...lie, base: -300, top: 0, width: 120 }, BEAM)).toMatchObject({
      ...{ start: { z: 3100 }, end: { z: 3100 }, runs: 'level', depth: 300, width: 120, assumed: [] },
    });
    expect(axis({ ...lie, base: -300, top: 0, depth: 290 }, BEAM)).toMatchObject({
      ...{ start: { z: 3100 }, end: { z: 3100 }, depth: 290 },
    });
  });
  it('of which only the top is stated hangs from it by half its depth', () =>
    expect(axis({ ...lie, top: 0, depth: 240 }, BEAM)).toMatchObject({
      ...{ start: { z: 3130 }, end: { z: 3130 }, runs: 'level' },
    }));
  it('is level also where they are no faces, and then not as deep', () => {
    const faces = facesOf({ ...UNSAID, ...lie, base: 0, top: 1820 }, BEAM);
    expect(faces && isPlausibleDepth(faces, null)).toBe(false);
    expect(axis({ ...lie, base: 0, top: 1820 }, BEAM)).toMatchObject({
      ...{ start: { z: 4160 }, end: { z: 4160 }, runs: 'level', depth: 240 },
    });
  });
  it('is compared with the stated depth, give or take what planing takes', () => {
    const plausible = (depth: number | null) => isPlausibleDepth({ underside: -300, top: 0 }, depth);
    expect([270, 300, 330, null].map(plausible)).toEqual([true, true, true, true]);
    expect([105, 269, 331].map(plausible)).toEqual([false, false, false]);
    expect(isPlausibleDepth({ underside: 0, top: 1001 }, null)).toBe(false);
  });
  it('has no faces where it stands, slopes or is nobody’s kind', () => {
    const heights = { ...UNSAID, from: 'い一', to: 'へ一', base: 0, top: 300 };
    expect([POST, RAFTER, ANY].map((usual) => facesOf(heights, usual))).toEqual([null, null, null]);
    expect(facesOf({ ...heights, to: '' }, RAIL)).toBeNull();
    expect(axis(heights, RAFTER).end.z).toBe(300);
  });
  it('never slopes, whatever is stated', () => {
    const height = fc.option(fc.integer({ min: -1000, max: 9000 }));
    fc.assert(
      fc.property(height, height, fc.option(fc.integer({ min: 1, max: 900 })), (base, top, depth) => {
        const found = read({ ...lie, base, top, depth }, BEAM);
        if (!found.ok) return;
        expect(found.axis.runs).toBe('level');
        expect(found.axis.start.z).toBe(found.axis.end.z);
        if (base === null || top === null) return;
        expect(found.axis.start.z - 3250).toBeCloseTo((base + top) / 2, 2);
      }),
    );
  });
});

describe('a rafter', () => {
  it('rises from its lower end', () => {
    const found = axis({ from: 'い二', to: 'は二', level: '軒', base: 0, top: 1456 }, RAFTER);
    expect(found).toMatchObject({ end: pointAt(2 * BAY, BAY, 7456), runs: 'sloping', level: '軒' });
    // Four sun in ten (四寸勾配): √(1 + 0.4²) = 1.0770330 of the plan length. Common practice: 勾配の伸び率.
    expect(found.length).toBeCloseTo(2 * BAY * 1.077033, 2);
  });
});

describe('sections', () => {
  it('are as stated; half a statement is completed and said', () => {
    expect(axis({ from: 'い一', width: 150, depth: 180 }, POST)).toMatchObject({ width: 150, depth: 180 });
    expect(axis({ from: 'い一', width: 150, depth: 180 }, POST).assumed).toEqual(['base', 'top']);
    expect(axis({ from: 'い一', width: 150 }, POST)).toMatchObject({
      width: 150,
      depth: 120,
      assumed: ['base', 'top', 'section'],
    });
  });
  // 3.5 sun is 106 mm, sawn 105: common practice.
  it('are 105 square where neither schedule nor kind says any', () =>
    expect(axis({ from: 'い一' }, ANY)).toMatchObject({ width: 105, depth: 105 }));
  it('wider than every bay are a slip of the unit, but only where stated', () => {
    const narrow = gridReader(someGrid(100, 3));
    expect(problem({ from: 'い一', width: 1050 }, POST, gridReader(someGrid(910)))).toEqual([
      'section-larger-than-bay',
      'width',
    ]);
    expect(problem({ from: 'い一' }, POST, narrow)).toBeNull();
    expect(problem({ from: 'い一', depth: 120 }, POST, narrow)).toEqual(['section-larger-than-bay', 'depth']);
    expect(problem({ from: 'い一', width: 5000 }, POST, gridReader(someGrid(BAY, 1)))).toBeNull();
  });
});

/** Of every problem at least one statement that has it, and where it lies. */
const IMPOSSIBLE: readonly (readonly [
  (typeof AXIS_PROBLEMS)[number],
  keyof SetOut,
  Partial<SetOut>,
  UsualLie,
])[] = [
  ['from-missing', 'from', { from: ' ', to: 'い一' }, ANY],
  ['to-missing', 'to', { from: 'い一' }, RAIL],
  ['to-missing', 'to', { from: 'い一', to: '　', top: 900 }, RAFTER],
  ['unknown-mark', 'from', { from: 'い七' }, POST],
  ['unknown-mark', 'to', { from: 'い一', to: '二の柱' }, RAIL],
  ['unknown-level', 'level', { from: 'い一', level: '3F' }, POST],
  ['top-missing', 'top', { from: 'い一', level: '軒' }, POST],
  ['top-missing', 'top', { from: 'い一', to: 'は一', level: '軒' }, RAFTER],
  ['base-above-top', 'base', { from: 'い一', level: '1F', base: 2000, top: 1000 }, POST],
  ['base-above-top', 'top', { from: 'い一', level: '1F', top: -1 }, POST],
  ['no-length', 'top', { from: 'い一', base: 900, top: 900 }, POST],
  ['no-length', 'to', { from: 'い一', to: 'い一', base: 900 }, RAIL],
  ['no-length', 'top', { from: 'い一', to: 'い一', base: 900, top: 900 }, RAIL],
  ['section-impossible', 'width', { from: 'い一', width: 0 }, POST],
  ['section-impossible', 'depth', { from: 'い一', depth: -120 }, POST],
  ['section-impossible', 'width', { from: 'い一', width: NaN }, POST],
  ['section-larger-than-bay', 'width', { from: 'い一', width: 1821 }, POST],
];

describe('what cannot be', () => {
  it.each(IMPOSSIBLE)('%s at %s: %o', (reason, field, stated, usual) =>
    expect(problem(stated, usual)).toEqual([reason, field]),
  );
  it('is ambiguous where a mark could be two crossings', () => {
    const grid = someGrid(BAY, 2);
    const labelled = (labels: [string, string], lines: typeof grid.first.lines) =>
      lines.map((line, i) => ({ ...line, label: labels[i] ?? '' }));
    const reader = gridReader({
      ...grid,
      first: { ...grid.first, lines: labelled(['1', '1-2'], grid.first.lines) },
      second: { ...grid.second, lines: labelled(['3', '2-3'], grid.second.lines) },
    });
    expect(problem({ from: '1-2-3' }, POST, reader)).toEqual(['ambiguous-mark', 'from']);
  });
  test('every reason has a case', () => {
    const tested = new Set([...IMPOSSIBLE.map(([reason]) => reason), 'ambiguous-mark']);
    expect(AXIS_PROBLEMS.filter((reason) => !tested.has(reason))).toEqual([]);
  });
  it('is a post without levels and without a top, while one with a top stands', () => {
    const reader = gridReader({ ...someGrid(), levels: [] });
    expect(problem({ from: 'い一' }, POST, reader)).toEqual(['top-missing', 'top']);
    expect(axis({ from: 'い一', top: 2700 }, POST, reader)).toMatchObject({
      start: { z: 0 },
      end: { z: 2700 },
      level: null,
    });
  });
});

describe('any statement', () => {
  const crossing = fc.constantFrom('い一', 'ろ三', '又は二', 'へ六', '');
  const height = fc.option(fc.integer({ min: -1000, max: 9000 }));
  const size = fc.option(fc.integer({ min: -10, max: 2000 }));
  const level = fc.constantFrom('', '1F', '2F', '軒', '3F');
  const statement = fc.record({
    from: crossing,
    to: crossing,
    level,
    base: height,
    top: height,
    width: size,
    depth: size,
  });
  it('gives an axis that can be, or a problem at a field', () => {
    fc.assert(
      fc.property(statement, fc.constantFrom(POST, RAIL, RAFTER, ANY), (stated, usual) => {
        const found = axisOf(stated, usual, someReader);
        if (!found.ok) {
          expect(Object.keys(stated)).toContain(found.problem.field);
          return;
        }
        const { start, end, length, width, depth, assumed } = found.axis;
        expect(end.z).toBeGreaterThanOrEqual(start.z);
        expect(length).toBeCloseTo(Math.hypot(end.x - start.x, end.y - start.y, end.z - start.z), 2);
        expect(Math.min(length, width, depth)).toBeGreaterThan(0);
        const hangsFromItsTop = usual === RAIL && stated.top !== null && stated.from !== stated.to;
        expect(assumed.includes('base')).toBe(stated.base === null && !hangsFromItsTop);
        if (stated.width !== null && stated.depth !== null) expect(assumed).not.toContain('section');
        if (stated.width === null) expect(assumed).toContain('section');
      }),
      { numRuns: 2000 },
    );
  });
});

test('the point of an axis so far from its start, also beyond its ends', () => {
  const sloping = axisBetween([0, 0, 0], [300, 0, 400]);
  expect([-50, 0, 250, 500, 600].map((along) => pointOn(sloping, along))).toEqual([
    pointAt(-30, 0, -40),
    pointAt(0, 0, 0),
    pointAt(150, 0, 200),
    pointAt(300, 0, 400),
    pointAt(360, 0, 480),
  ]);
});
