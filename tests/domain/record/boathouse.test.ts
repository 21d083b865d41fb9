import { describe, expect, it } from 'vitest';
import { boathouse } from '#domain/frame/invented/boathouse/boathouse';
import { buildDaysOf, stageBy } from '#domain/frame/invented/boathouse/build-days';
import { linesOf } from '#domain/frame/invented/boathouse/lines';
import { USUAL_SIZE, railHeights, sun } from '#domain/frame/invented/boathouse/measures';
import { gridProblem } from '#domain/frame/grid-problem';
import { parseMark } from '#domain/frame/mark';
import type { Axis } from '#domain/frame/set-out';
import { isInTrack, type Stage } from '#domain/frame/stage';
import { wallCheck } from '#domain/frame/wall-check';
import { gridReader } from '#domain/frame/grid-reader';
import { inventedReport, membersInSpace } from './invented-report.ts';

const HOUSE = boathouse('2026-04-01');
const AXES = new Map(membersInSpace(HOUSE).map(({ mark, axis }) => [mark, axis]));
const axisOf = (mark: string): Axis => {
  const axis = AXES.get(mark);
  if (!axis) throw new Error(`${mark} has no place`);
  return axis;
};
const sizes = [
  [2, 2, 2],
  [3, 4, 2],
  [4, 4, 2],
  [10, 12, 2],
  [24, 30, 2],
  [2, 2, 1],
  [3, 4, 1],
  [10, 12, 1],
] as const;

it('measures by the shaku of 10/33 m', () => {
  // Six shaku are 1818.18 mm; a sun is 30.303 mm.
  expect([sun(60), sun(1), sun(4)]).toEqual([1818, 30, 121]);
  expect(HOUSE.grid.first.lines.map(({ label, at }) => [label, at])).toEqual([
    ['い', 0],
    ['ろ', 1818],
    ['は', 3636],
    ['に', 5455],
    ['ほ', 7273],
  ]);
});

describe.each(sizes)('a boathouse of %i by %i bays and %i storeys', (along, across, storeys) => {
  const size = { ...USUAL_SIZE, bays: [along, across], storeys } as const;
  const house = boathouse('2026-04-01', size);
  const members = membersInSpace(house);
  it('has a place and a mark of its own for each member', () => {
    expect(gridProblem(house.grid)).toBeNull();
    expect(new Set(house.members.map(({ mark }) => mark)).size).toBe(house.members.length);
    for (const { mark } of house.members) expect(parseMark(mark)).toEqual({ ok: true, mark });
    // Posts of each storey on every crossing.
    const posts = house.members.filter(({ kind }) => kind === '管柱');
    expect(posts).toHaveLength((along + 1) * (across + 1) * storeys);
    // On each roof beam a strut at every half bay between the eaves, and rafters at every half bay, on both sides.
    const struts = house.members.filter(({ kind }) => kind === '小屋束' || kind === '棟束');
    expect(struts).toHaveLength((along + 1) * (across * 2 - 1));
    expect(house.members.filter(({ kind }) => kind === '垂木')).toHaveLength((along * 2 + 1) * 2);
  });
  it('covers every joist, bearer, rafter, purlin and rail of its walls', () => {
    const hidden = new Set([...inventedReport(house, []).values()].map(({ mark }) => mark as string));
    const unhidden = members.filter(({ mark }) => !hidden.has(mark)).map(({ kind }) => kind?.id);
    for (const kind of ['neda', 'obiki', 'yukazuka', 'taruki', 'moya', 'jinuki', 'koshinuki'])
      expect(unhidden).not.toContain(kind);
    // Posts of earthen walls stay in sight, and so do roof struts under an open roof. Common practice.
    expect(unhidden).toEqual(expect.arrayContaining(['kudabashira', 'koyazuka']));
  });
  it('leaves no upright in the air: each stands on a stone or a timber, and bears one', () => {
    const axes = members.flatMap(({ mark, axis }) => (axis ? [{ mark, axis }] : []));
    const isUpright = ({ start, end }: Axis) => start.x === end.x && start.y === end.y;
    const level = axes.map(({ axis }) => axis).filter(({ start, end }) => start.z === end.z);
    /** What lies over or under a point: within 1 mm of half its width, the height to the rounding of a schedule. */
    const isHeld = ({ x, y }: Axis['start'], z: number, side: 1 | -1) =>
      level.some(({ start, end, width, depth }) => {
        const isOver = (at: number, from: number, to: number) =>
          at >= Math.min(from, to) - width / 2 - 1 && at <= Math.max(from, to) + width / 2 + 1;
        return (
          isOver(x, start.x, end.x) &&
          isOver(y, start.y, end.y) &&
          Math.abs(start.z - (side * depth) / 2 - z) <= 1
        );
      });
    const STONE = 160;
    const loose = axes
      .filter(({ axis }) => isUpright(axis))
      .filter(({ axis: { start, end } }) => {
        const [foot, head] = [Math.min(start.z, end.z), Math.max(start.z, end.z)];
        return !(foot === STONE || isHeld(start, foot, -1)) || !isHeld(start, head, 1);
      });
    expect(loose.map(({ mark }) => mark)).toEqual([]);
    expect(axes.filter(({ axis }) => isUpright(axis)).length).toBeGreaterThan(along * across);
  });
  it('stands, and comes to its stages, on levels that its grid has', () => {
    const labels = house.grid.levels.map(({ label }) => label);
    expect(labels).toEqual(storeys === 2 ? ['1F', '2F', '軒'] : ['1F', '軒']);
    const daysOf = buildDaysOf(linesOf(size));
    for (const member of house.members) {
      expect(labels).toContain(member.setOut.level);
      expect(daysOf(member).pegged).toBeGreaterThan(0);
    }
    const loft = house.coverings.filter(({ name }) => name.includes('二階') || name.includes('妻壁'));
    expect(loft).toHaveLength(storeys === 2 ? 5 : 0);
  });
});

it('is of about the size that one crew records in a season, and the same each time', () => {
  expect(HOUSE.members.length).toBeGreaterThan(200);
  expect(HOUSE.members.length).toBeLessThan(240);
  expect(JSON.stringify(boathouse('2026-04-01'))).toBe(JSON.stringify(HOUSE));
});

it.each([
  [1, 4],
  [4, 3],
  [47, 4],
  [4, 100],
])('is not built of %i by %i bays', (along, across) => {
  expect(() => linesOf({ ...USUAL_SIZE, bays: [along, across] })).toThrow(RangeError);
});

describe('its pieces meet as a carpenter sets them out', () => {
  const bottom = ({ start, end, depth }: Axis) => Math.min(start.z, end.z) - depth / 2;
  const top = ({ start, end, depth }: Axis) => Math.max(start.z, end.z) + depth / 2;
  /** To the millimetre that a schedule is rounded to. */
  const meet = (one: number, other: number) => expect(Math.abs(one - other)).toBeLessThanOrEqual(1);
  it('posts stand on stones 160 mm high and bear the beams', () => {
    expect(axisOf('い一').start.z).toBe(160);
    meet(axisOf('い一').end.z, bottom(axisOf('い通り床梁')));
    meet(axisOf('二階 は三').start.z, top(axisOf('は通り床梁')));
    meet(axisOf('二階 い一').end.z, bottom(axisOf('一通り桁')));
    meet(axisOf('二階 は三').end.z, bottom(axisOf('は通り小屋梁')));
  });
  it('joists lie on beams and bearers', () => {
    meet(bottom(axisOf('二階 又二根太')), top(axisOf('は通り床梁')));
    meet(bottom(axisOf('ろ根太')), top(axisOf('又二大引')));
    meet(axisOf('ろ又二床束').end.z, bottom(axisOf('又二大引')));
  });
  it('struts stand on the roof beams and bear purlins, and these the rafters', () => {
    const strut = axisOf('は又一小屋束');
    meet(strut.start.z, top(axisOf('は通り小屋梁')));
    meet(strut.end.z, bottom(axisOf('又一母屋')));
    meet(axisOf('は三棟束').end.z, bottom(axisOf('棟木')));
    // Half a bay in and at 4.5 in ten: 909 × 0.45 = 409 above the eaves; plumb over it half a rafter is 49.
    const { start, end } = axisOf('は一垂木');
    const over = start.z + (end.z - start.z) / 4;
    expect(Math.abs(over - 45 * Math.hypot(1, 0.45) - top(axisOf('又一母屋')))).toBeLessThanOrEqual(2);
    expect((end.z - start.z) / (end.y - start.y)).toBeCloseTo(0.45, 2);
  });
});

describe('one without a loft', () => {
  const shed = boathouse('2026-04-01', { ...USUAL_SIZE, storeys: 1 });
  const axes = new Map(membersInSpace(shed).map(({ mark, axis }) => [mark, axis]));
  const at = (mark: string): Axis => {
    const axis = axes.get(mark);
    if (!axis) throw new Error(`${mark} has no place`);
    return axis;
  };
  it('bears its plates and its roof beams on posts from the stones', () => {
    const meet = (one: number, other: number) => expect(Math.abs(one - other)).toBeLessThanOrEqual(1);
    const under = ({ start, depth }: Axis) => start.z - depth / 2;
    expect(at('い一').start.z).toBe(160);
    meet(at('い一').end.z, under(at('一通り桁')));
    meet(at('は三').end.z, under(at('は通り小屋梁')));
    meet(at('は又一小屋束').start.z, at('は通り小屋梁').start.z + at('は通り小屋梁').depth / 2);
  });
  it('has none of what makes a loft', () => {
    const kinds = new Set(shed.members.map(({ kind }) => kind));
    for (const kind of ['床梁', '胴差', '間柱', '筋かい']) expect(kinds).not.toContain(kind);
    expect(JSON.stringify(shed)).toBe(JSON.stringify(boathouse('2026-04-01', { ...USUAL_SIZE, storeys: 1 })));
  });
});

/** The published figures of an earthen wall: sources stand in frame/wall-rules. */
it.each([1, 2] as const)('has rails in its earthen walls as is published, with %i storeys', (storeys) => {
  const house = boathouse('2026-04-01', { ...USUAL_SIZE, storeys });
  const inSpace = membersInSpace(house);
  const kinds = new Map(inSpace.map(({ mark, kind }) => [mark, kind?.id ?? null]));
  const pieces = inSpace.flatMap(({ mark, axis }) => (axis ? [{ mark, axis }] : []));
  const lower = house.coverings.filter(({ kind, name }) => kind === 'plaster' && !name.startsWith('二階'));
  expect(lower).toHaveLength(5);
  for (const { zone } of lower) {
    if (zone.shape !== 'wall') throw new Error(zone.shape);
    const read = wallCheck(zone, pieces, (mark) => kinds.get(mark) ?? null, gridReader(house.grid));
    if (!read.ok) throw new Error(read.problem.reason);
    const verdicts = read.results.filter(({ rule }) => rule.startsWith('rail')).map(({ verdict }) => verdict);
    expect(verdicts).toEqual(Array(4).fill('as published'));
  }
});

it('adds rails where a wall is so high that three would stand more than 910 mm apart', () => {
  expect([1300, 2350, 3640, 3700, 4600].map((wall) => railHeights(wall, 3).length)).toEqual([3, 3, 3, 4, 5]);
  expect(railHeights(2000, 3)).toEqual([500, 1000, 1500]);
});

describe('its build', () => {
  const daysOf = buildDaysOf(linesOf(USUAL_SIZE));
  const days = new Map(HOUSE.members.map((member) => [member.mark, daysOf(member)]));
  it('takes every member through stages of its own kind, in their order', () => {
    for (const { mark, track } of membersInSpace(HOUSE)) {
      const own = Object.entries(days.get(mark) ?? {}) as [Stage, number][];
      expect(own.length).toBeGreaterThanOrEqual(3);
      for (const [stage] of own) expect(isInTrack(stage, track)).toBe(true);
      const inOrder = own.map(([, day]) => day);
      expect(inOrder).toEqual([...inOrder].sort((a, b) => a - b));
    }
  });
  it('raises nothing before what bears it', () => {
    const raised = (mark: string) => days.get(mark)?.raised ?? NaN;
    const bears = [
      ['い一', 'い通り床梁'],
      ['い通り床梁', '二階 い一'],
      ['二階 い一', '一通り桁'],
      ['は通り小屋梁', 'は又一小屋束'],
      ['は又一小屋束', '又一母屋'],
      ['又一母屋', 'は一垂木'],
      ['又二大引', 'ろ根太'],
      ['は通り床梁', '二階 又二根太'],
    ] as const;
    for (const [below, above] of bears) expect(raised(below)).toBeLessThanOrEqual(raised(above));
  });
  it('covers nothing that is not made fast by then, as its coverings are planned', () => {
    const dayOf = (day: string) => (Date.parse(day) - Date.parse(HOUSE.firstDay)) / 86_400_000;
    const planned = new Map(HOUSE.coverings.map(({ name, plannedDay }) => [name, dayOf(plannedDay)]));
    const report = inventedReport(HOUSE, []);
    for (const [key, { mark, least }] of report) {
      const own = days.get(mark) ?? {};
      expect(own[least] ?? NaN, key).toBeLessThan(planned.get(key.split(': ')[0] ?? '') ?? NaN);
      if (own.plastered !== undefined && key.includes('荒壁'))
        expect(own.plastered, key).toBe(planned.get(key.split(': ')[0] ?? ''));
    }
  });
  it('shows of a member the furthest stage by a day', () => {
    const rail = days.get('い通り腰貫') ?? {};
    expect([-21, -20, 0, 5, 6, 23, 24, 29, 30].map((day) => stageBy(rail, day))).toEqual([
      ...[null, 'cut', 'raised', 'raised', 'pegged', 'pegged', 'lath-on', 'lath-on', 'plastered'],
    ]);
  });
  it('knows no member of another house', () => {
    const [member] = HOUSE.members;
    if (!member) throw new Error('no member');
    expect(() => daysOf({ ...member, kind: '隅木' })).toThrow(RangeError);
  });
});
