import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elevations } from '#domain/frame/drawing/elevations';
import { cornersOf, distanceTo } from '#domain/frame/drawing/flat';
import { mirrored } from '#domain/frame/drawing/mirrored';
import { memberAt } from '#domain/frame/drawing/member-at';
import { plans } from '#domain/frame/drawing/plans';
import type { Drawable, Sheet } from '#domain/frame/drawing/sheet';
import { changeDays, hiddenOn, missingOn, stageOn } from '#domain/frame/drawing/state-on';
import type { Axis } from '#domain/frame/set-out';
import type { Zone } from '#domain/frame/zone';
import { axisBetween, BAY, someGrid } from '../../support/some-grid.ts';

const memberOf = (mark: string, axis: Axis | null) => ({ mark, axis });
const zoneOf = (id: string, zone: Zone) => ({ id, zone });
const frameOf = (members: Drawable['members'], coverings: Drawable['coverings'] = []): Drawable => ({
  grid: someGrid(),
  members,
  coverings,
});
const named = (sheets: readonly Sheet[], key: string): Sheet => {
  const sheet = sheets.find((one) => one.key === key);
  if (!sheet) throw new Error(`There is no ${key}.`);
  return sheet;
};
/** Without the sign of nothing. */
const rounded = (value: number) => Math.round(value) + 0;
const shown = (sheet: Sheet, mark: string) => sheet.members.find((member) => member.mark === mark);

/** いの一 stands in the upper right: first lines leftward, second downward. Common practice. */
const POST = memberOf('い三', axisBetween([0, 2 * BAY, 450], [0, 2 * BAY, 6000], [120, 150]));
/** On い from 一 to 四, 3 m above the datum, 24 mm thick and 105 mm high. */
const RAIL = memberOf('い貫', axisBetween([0, 0, 3000], [0, 3 * BAY, 3000], [24, 105]));
/** Along 三, from い to は. */
const BEAM = memberOf('三梁', axisBetween([0, 2 * BAY, 3250], [2 * BAY, 2 * BAY, 3250], [120, 240]));
const HALF = memberOf('又い束', axisBetween([BAY / 2, 0, 450], [BAY / 2, 0, 3250]));
const HIP = memberOf('隅木', axisBetween([0, 0, 6000], [3 * BAY, 3 * BAY, 8000]));

describe('elevations', () => {
  const sheets = elevations(frameOf([POST, RAIL, BEAM, HALF, HIP, memberOf('無', null)]));

  it('are drawn of each line and half line with members in its plane, in the order of the grid', () => {
    expect(sheets.map(({ key }) => key)).toEqual(['first:い', 'first:又い', 'second:一', 'second:三']);
  });

  it('show a post in both of its lines, each with its side of the section', () => {
    // Depth runs along the second positions, so it is what the elevation on い shows.
    expect(shown(named(sheets, 'first:い'), 'い三')).toMatchObject({
      from: { u: -2 * BAY, v: -450 },
      to: { u: -2 * BAY, v: -6000 },
      half: 75,
      cutAt: null,
    });
    expect(shown(named(sheets, 'second:三'), 'い三')).toMatchObject({ half: 60, cutAt: null });
  });

  it('are not drawn of what is short and goes through the line: a peg on い lies in 二 alone', () => {
    const peg = memberOf('栓', axisBetween([-100, BAY, 1000], [100, BAY, 1000], [18, 18]));
    expect(elevations(frameOf([peg])).map(({ key }) => key)).toEqual(['second:二']);
  });

  it('count leftward where the plan counts leftward and downward (common practice)', () => {
    expect(
      named(sheets, 'first:い')
        .upright.map(({ label, at }) => [label, at])
        .slice(0, 2),
    ).toEqual([
      ['一', -0],
      ['二', -BAY],
    ]);
    const turned = { ...someGrid(), second: { ...someGrid().second, runs: 'upward' as const } };
    const [first] = elevations({ ...frameOf([POST]), grid: turned });
    expect(first?.upright[1]?.at).toBe(BAY);
  });

  it('show what only goes through as its section', () => {
    const cut = shown(named(sheets, 'first:い'), '三梁');
    expect(cut).toMatchObject({ cutAt: 0, half: 120 });
    expect(cornersOf(cut!).map(({ u }) => u)).toEqual([
      -2 * BAY - 60,
      -2 * BAY + 60,
      -2 * BAY + 60,
      -2 * BAY - 60,
    ]);
    expect(shown(named(sheets, 'second:三'), 'い貫')?.cutAt).toBe(2 * BAY);
    expect(shown(named(sheets, 'second:一'), 'い三')).toBeUndefined();
  });

  it('widen the section of what goes through at a slant: 1/cos 45° = 1.414 times', () => {
    const hip = shown(named(sheets, 'second:三'), '隅木');
    expect(hip!.to.u - hip!.from.u).toBeCloseTo(105 * Math.SQRT2, 6);
  });

  it('cut a wall, a floor and a roof slope where the line goes through them', () => {
    const wall: Zone = {
      ...{ shape: 'wall', family: 'first', line: 'い', from: '二', to: '四', bottom: 450, top: 3250 },
      ...{ face: 'both', over: 'between-posts' },
    };
    const roof: Zone = {
      ...{ shape: 'slope', family: 'second', eaves: '一', ridge: '三', from: 'い', to: 'に' },
      ...{ eavesHeight: 6000, ridgeHeight: 6000 + 2 * BAY, below: 100 },
    };
    const floor: Zone = { shape: 'flat', corners: ['い一', 'は三'], bottom: 300, top: 460 };
    const zones = [zoneOf('wall', wall), zoneOf('roof', roof), zoneOf('floor', floor)];
    const [on, off] = elevations(frameOf([POST, HALF], zones));
    const boxOf = (id: string) => {
      const corners = on?.zones.find(({ covering }) => covering === id)?.corners ?? [];
      const [u, v] = [corners.map((c) => c.u), corners.map((c) => c.v)];
      return [Math.min(...u), Math.max(...u), Math.min(...v), Math.max(...v)].map(rounded);
    };
    expect(boxOf('wall')).toEqual([-3 * BAY, -BAY, -3250, -450]);
    expect(boxOf('floor')).toEqual([-2 * BAY, 0, -460, -300]);
    // Ten in ten: what lies 100 mm below the surface lies 141 mm under it upright.
    expect(boxOf('roof')).toEqual([-2 * BAY, 0, -6000 - 2 * BAY, -6000 + 141]);
    expect(off?.zones.map(({ covering }) => covering)).toEqual(['roof', 'floor']);
  });

  it('put every member that runs along a line into one plane of that family at most', () => {
    const at = fc.integer({ min: 0, max: 10 }).map((n) => (n * BAY) / 2);
    fc.assert(
      fc.property(at, at, at, fc.integer({ min: 1, max: 3000 }), (x, y, far, rise) => {
        const all = elevations(frameOf([memberOf('x', axisBetween([x, y, 0], [x, far, rise]))]));
        const own = all.filter((sheet) => sheet.members.some(({ cutAt }) => cutAt === null));
        const families = own.map(({ key }) => key.split(':')[0]);
        expect(new Set(families).size).toBe(families.length);
        expect(families).toContain('first');
      }),
    );
  });

  it('show lengths in their plane to scale', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10 }), fc.integer({ min: 0, max: 4000 }), (bays, rise) => {
        const axis = axisBetween([0, 0, 1000], [0, (bays * BAY) / 2, 1000 + rise]);
        const strip = shown(named(elevations(frameOf([memberOf('x', axis)])), 'first:い'), 'x')!;
        const length = Math.hypot(strip.to.u - strip.from.u, strip.to.v - strip.from.v);
        expect(length).toBeCloseTo(axis.length, 2);
      }),
    );
  });
});

describe('an elevation from the other side', () => {
  const sheets = elevations(
    frameOf(
      [POST, RAIL, BEAM],
      [
        zoneOf('w', {
          ...{ shape: 'wall', family: 'first', line: 'い', from: '一', to: '二', bottom: 560, top: 3180 },
          ...{ face: 'both', over: 'over-posts' },
        }),
      ],
    ),
  );
  it('has its lines in the order in which one then walks past them (common practice)', () => {
    const order = (sheet: Sheet) => [...sheet.upright].sort((a, b) => a.at - b.at).map(({ label }) => label);
    const sheet = named(sheets, 'first:い');
    expect(order(mirrored(sheet))).toEqual(order(sheet).reverse());
  });
  it('shows all at its height and as long as before, within its bounds, and twice turned as it was', () => {
    for (const sheet of sheets) {
      const behind = mirrored(sheet);
      expect(mirrored(behind)).toEqual(mirrored(mirrored(mirrored(behind))));
      const us = [...behind.members.flatMap(cornersOfAll), ...behind.zones.flatMap(({ corners }) => corners)];
      for (const { u } of us) {
        expect(u).toBeGreaterThanOrEqual(behind.bounds.left - 1e-6);
        expect(u).toBeLessThanOrEqual(behind.bounds.right + 1e-6);
      }
      behind.members.forEach(({ from, to }, i) => {
        const was = sheet.members[i];
        expect([from.v, to.v, from.u + (was?.from.u ?? NaN), to.u + (was?.to.u ?? NaN)]).toEqual([
          ...[was?.from.v, was?.to.v, 0, 0],
        ]);
      });
    }
  });
  it('is none of a plan', () => {
    const [plan] = plans(frameOf([POST]));
    expect(plan && mirrored(plan)).toBe(plan);
  });
});

const cornersOfAll = (strip: Parameters<typeof cornersOf>[0]) => cornersOf(strip);

describe('plans', () => {
  const withLevel = (axis: Axis, level: string) => ({ ...axis, level });
  const tall = memberOf('通し', withLevel(axisBetween([0, 0, 450], [0, 0, 6000], [120, 150]), '1F'));
  const short = memberOf('管', withLevel(axisBetween([BAY, 0, 450], [BAY, 0, 3250]), '1F'));
  const beam = memberOf('梁', withLevel(axisBetween([0, BAY, 3250], [BAY, BAY, 3250], [120, 240]), '2F'));
  const [ground, upper, eaves] = plans(frameOf([tall, short, beam]));

  it('cut the posts that pass, and show what lies on the level', () => {
    expect(ground?.members.map(({ mark }) => mark)).toEqual(['通し', '管']);
    expect(upper?.members.map(({ mark }) => mark)).toEqual(['通し', '梁']);
    expect(eaves?.members).toEqual([]);
  });

  it('put the first lines leftward and the second downward, as the crew turns them', () => {
    expect(shown(upper!, '梁')).toMatchObject({
      from: { u: -0, v: BAY },
      to: { u: -BAY, v: BAY },
      half: 60,
    });
    expect(shown(ground!, '通し')).toMatchObject({ from: { u: -60 }, to: { u: 60 }, half: 75 });
  });

  it('show a floor on the level that it makes, with all that it hides below it', () => {
    const corners = ['い一', 'い三', 'は三', 'は一'];
    const at = (bottom: number, top: number): Zone => ({ shape: 'flat', corners, bottom, top });
    const { levels } = frameOf([tall]).grid!;
    const [first, second] = levels.map(({ height }) => height);
    const zones = [
      zoneOf('boards', at(first! - 300, first!)),
      zoneOf('loft', at(second! - 335, second! + 30)),
      // Well below the level over it.
      zoneOf('ceiling', at(second! - 600, second! - 550)),
    ];
    const named = plans(frameOf([tall], zones)).map((sheet) => sheet.zones.map(({ covering }) => covering));
    expect(named).toEqual([['boards', 'ceiling'], ['loft'], []]);
  });

  it('show a roof from above as the ground that it covers', () => {
    const roof: Zone = {
      ...{ shape: 'slope', family: 'second', eaves: '一', ridge: '三', from: 'い', to: 'は' },
      ...{ eavesHeight: 6000, ridgeHeight: 7000, below: 100 },
    };
    const sheets = plans(frameOf([tall], [zoneOf('roof', roof)]));
    expect(sheets.map(({ zones }) => zones.length)).toEqual([0, 0, 1]);
    const corners = sheets[2]?.zones[0]?.corners ?? [];
    expect(corners.map(({ u, v }) => [rounded(u), rounded(v)]).sort()).toEqual(
      [
        [0, 0],
        [-2 * BAY, 0],
        [0, 2 * BAY],
        [-2 * BAY, 2 * BAY],
      ]
        .map(([u, v]) => [u! + 0, v])
        .sort(),
    );
  });
});

describe('the state on a day', () => {
  const seen = [
    { day: '2026-04-02', stage: 'raised' },
    { day: '2026-04-20', stage: 'pegged' },
  ] as never;

  it('is the stage reached by the end of that day', () => {
    expect(
      ['2026-04-01', '2026-04-02', '2026-04-19', '2026-05-01'].map((day) => stageOn({ seen }, day)),
    ).toEqual([null, 'raised', 'raised', 'pegged']);
  });

  it('says of what is hidden since when it is on record, and when it was lost', () => {
    const complete = { state: 'on-record', onRecordSince: '2026-04-20' } as never;
    const missing = { state: 'lost', onRecordSince: null, hiddenDay: '2026-04-25', waivedDay: null } as const;
    expect(hiddenOn(complete, '2026-04-19')).toBe('not-yet');
    expect(hiddenOn(complete, '2026-04-20')).toBe('on-record');
    expect(hiddenOn(missing, '2026-04-24')).toBe('gap');
    expect(hiddenOn(missing, '2026-04-25')).toBe('lost');
    expect(hiddenOn({ ...missing, state: 'retired' }, '2026-04-25')).toBe('retired');
    // Of a wall that closed on one face nothing is lost while the other is open.
    expect(hiddenOn({ ...missing, state: 'gap', hiddenDay: null }, '2026-04-25')).toBe('gap');
    const waived = { ...missing, state: 'waived', waivedDay: '2026-04-23' } as const;
    expect(['2026-04-22', '2026-04-23', '2026-04-25'].map((day) => hiddenOn(waived, day))).toEqual([
      'gap',
      'waived',
      'waived',
    ]);
    const before = { ...missing, state: 'hidden-before' } as const;
    expect(['2026-04-24', '2026-04-25'].map((day) => hiddenOn(before, day))).toEqual([
      'gap',
      'hidden-before',
    ]);
  });

  it('is missing whole before the least stage was on any photo, then as far as it is known today', () => {
    const missing = [{ from: 1820, to: 5460 }];
    const hidden = { least: 'pegged', stretches: [{ from: 0, to: 5460 }], missing } as const;
    const on = (day: string) => missingOn(hidden as never, { seen }, day);
    expect(on('2026-04-19')).toEqual(hidden.stretches);
    expect(on('2026-04-20')).toEqual(missing);
  });

  it('changes only on its days', () => {
    const hides = [
      { onRecordSince: '2026-04-20', hiddenDay: null, waivedDay: null },
      { onRecordSince: null, hiddenDay: '2026-04-28', waivedDay: '2026-04-27' },
    ];
    const coverings = [{ closedDay: '2026-04-25', hides }] as never;
    expect(changeDays({ members: [{ seen }], coverings })).toEqual([
      '2026-04-02',
      '2026-04-20',
      '2026-04-25',
      '2026-04-27',
      '2026-04-28',
    ]);
  });
});

describe('the member under a pointer', () => {
  const [sheet] = elevations(frameOf([POST, RAIL, BEAM]));

  it('is what lies there, what is cut before what goes on behind it', () => {
    const at = (u: number, v: number, reach = 0) => memberAt(sheet!.members, { u, v }, reach)?.mark;
    expect(at(-2 * BAY, -2000)).toBe('い三');
    expect(at(-BAY, -3010)).toBe('い貫');
    expect(at(-2 * BAY, -3250)).toBe('三梁');
    expect(at(-BAY, -2900)).toBeUndefined();
    expect(at(-BAY, -2900, 60)).toBe('い貫');
  });

  it('is measured to the outline: against points stepped over the strip', () => {
    const coordinate = fc.integer({ min: -300, max: 300 });
    const point = fc.record({ u: coordinate, v: coordinate });
    fc.assert(
      fc.property(point, point, point, fc.integer({ min: 1, max: 80 }), (from, to, at, half) => {
        fc.pre(Math.hypot(to.u - from.u, to.v - from.v) > 1);
        const [a, b, , d] = cornersOf({ from, to, half });
        const steps = Array.from({ length: 101 }, (_, i) => i / 100);
        const walked = Math.min(
          ...steps.flatMap((s) =>
            steps.map((w) => {
              const u = a!.u + (b!.u - a!.u) * s + (d!.u - a!.u) * w;
              const v = a!.v + (b!.v - a!.v) * s + (d!.v - a!.v) * w;
              return Math.hypot(u - at.u, v - at.v);
            }),
          ),
        );
        expect(Math.abs(distanceTo({ from, to, half }, at) - walked)).toBeLessThan(9);
      }),
      { numRuns: 50 },
    );
  });
});
