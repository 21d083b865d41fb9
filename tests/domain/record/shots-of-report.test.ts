import { describe, expect, it, test } from 'vitest';
import type { ShotListView, ShotView } from '#domain/contract/shot-views';
import { gridReader } from '#domain/frame/grid-reader';
import { fourHundredHouse } from '#domain/frame/invented/four-hundred';
import { dayAfter, type InventedHouse } from '#domain/frame/invented/invented-house';
import { threeBayHouse } from '#domain/frame/invented/three-bay';
import type { Mark } from '#domain/frame/mark';
import type { Stage } from '#domain/frame/stage';
import type { Protection } from '#domain/record/protection';
import type { StandingTag } from '#domain/record/requirement';
import { shotsOfReport, type ShotsInput } from '#domain/record/shots-of-report';
import { lengthOf } from '#domain/record/stretches';
import { inventedClosings, membersInSpace } from './invented-report.ts';

const TODAY = '2026-05-01';
const barn = threeBayHouse(TODAY);
const reader = gridReader(barn.grid);

interface Said {
  readonly house?: InventedHouse;
  readonly tags?: readonly StandingTag[];
  readonly closed?: Readonly<Record<string, string>>;
  readonly stage?: Stage | null;
  readonly more?: Partial<ShotsInput>;
}

/** The list of an invented house, all of whose members are on record at a stage. */
function listOf({ house = barn, tags = [], closed = {}, stage = 'raised', more = {} }: Said = {}) {
  return shotsOfReport({
    report: inventedClosings(house, tags, closed),
    members: membersInSpace(house).map(({ mark, axis }) => ({
      ...{ mark: mark as Mark, axis, retired: false },
      seen: stage ? [{ day: TODAY, stage }] : [],
    })),
    coverings: house.coverings.map(({ name, kind, zone }) => ({
      ...{ kind, zone },
      closed: closed[name] ? closing(closed[name]) : null,
    })),
    protection: [],
    reader: gridReader(house.grid),
    days: 'all',
    ...more,
  });
}

const closing = (at: string) => ({
  ...{ at, by: null, note: '', release: null, without: null, takenBack: null },
});

const shotsAt = ({ turns }: ShotListView['places'][number]) => turns.flatMap(({ shots }) => shots);
const shotsOf = ({ places, unseen, placeless }: ShotListView): ShotView[] => [
  ...places.flatMap(shotsAt),
  ...unseen,
  ...placeless,
];
const tag = (mark: string, stage: Stage): StandingTag => ({
  ...{ id: mark, photo: mark, mark, stage, stretch: null, instant: '2026-04-30T01:00:00.000Z' },
  ...{ uncertaintyS: 1, datedBy: 'file', doubt: null, legibility: 'clear', findings: [] },
});

describe.each([
  ['a barn', barn],
  ['a house of 400 members', fourHundredHouse(TODAY)],
])('the list of %s', (_, house) => {
  const list = listOf({ house });
  it('holds every missing millimetre of the report once', () => {
    const wanted = new Map<string, number>();
    for (const { coverings } of inventedClosings(house, []).days)
      for (const { id, lines } of coverings)
        for (const { mark, hidden, state } of lines)
          if (state === 'gap') wanted.set(`${id} ${mark}`, hidden ? hidden.to - hidden.from : NaN);
    const told = new Map<string, number>();
    for (const { coverings, mark, stretches } of shotsOf(list))
      for (const key of coverings.map((covering) => `${covering} ${mark}`))
        told.set(key, (told.get(key) ?? 0) + lengthOf(stretches));
    expect([...told.keys()].sort()).toEqual([...wanted.keys()].sort());
    for (const [key, length] of told) expect(length, key).toBeCloseTo(wanted.get(key) ?? NaN, 3);
  });
  it('tells of each way that one looks once, and never of one that shows nothing', () => {
    for (const { turns } of list.places) {
      expect(turns.every(({ shots }) => shots.length > 0)).toBe(true);
      expect(new Set(turns.map(({ look }) => JSON.stringify(look))).size).toBe(turns.length);
    }
  });
  it('shows the most of it from somewhere', () => {
    const seen = list.places.flatMap(shotsAt).length;
    expect(seen).toBeGreaterThan(list.unseen.length * 3);
  });
});

it('is of what closes within some days, or should have closed', () => {
  // Planned ten and eleven days after the first day: the two halves of the roof.
  const within = (days: number) => listOf({ more: { days } });
  expect(within(9)).toMatchObject({ coverings: [], places: [], unseen: [] });
  expect(within(10).coverings).toEqual([
    { id: '北の屋根', name: '北の屋根', kind: 'roof-boards', plannedDay: dayAfter(TODAY, 10), daysLeft: 10 },
  ]);
  expect(within(11).coverings).toHaveLength(2);
  const gaps = inventedClosings(barn, []).counts.gaps;
  expect(within(9).later).toBe(gaps);
  expect(listOf().later).toBe(0);
  const late = { ...barn, coverings: barn.coverings.map((one) => ({ ...one, plannedDay: '2026-04-01' })) };
  expect(listOf({ house: late, more: { days: 0 } }).later).toBe(0);
});

it('leaves out what is on record, and says of the rest why nothing counts yet', () => {
  const mark = 'い通り腰貫';
  const found = (tags: readonly StandingTag[]) =>
    shotsOf(listOf({ tags })).filter((shot) => shot.mark === mark);
  expect(new Set(found([]).map(({ nearestMiss }) => nearestMiss))).toEqual(new Set(['no-photo']));
  const [{ least } = { least: 'cut' as const }] = found([]);
  expect(found([tag(mark, least)])).toEqual([]);
  expect(new Set(found([tag(mark, 'cut')]).map(({ nearestMiss }) => nearestMiss))).toEqual(
    new Set(['before-stage']),
  );
});

it('looks past what has only been cut, and at what has been raised', () => {
  // Posts stand in the way of rails behind them; what lies on trestles does not.
  const places = (stage: Stage | null) => listOf({ stage }).places.length;
  expect(places(null)).toBe(places('cut'));
  expect(listOf({ stage: 'cut' }).places).not.toEqual(listOf({ stage: 'raised' }).places);
  const gone = membersInSpace(barn).map(({ mark, axis }) => ({
    ...{ mark: mark as Mark, axis, retired: true },
    seen: [{ day: TODAY, stage: 'raised' as const }],
  }));
  expect(listOf({ more: { members: gone } }).places).toEqual(listOf({ stage: null }).places);
});

it('goes where a closed wall lets one see', () => {
  const closed = { 西の壁: '2026-04-30T00:00:00.000Z' };
  const list = listOf({ closed });
  expect(shotsOf(list).filter(({ coverings }) => coverings.includes('西の壁'))).toEqual([]);
  // The wall on い has closed on both faces: from outside of it nothing within is seen any more.
  const beyond = list.places.filter(({ before }) => before?.line === 'い' && before.outside);
  expect(beyond.flatMap(shotsAt).filter(({ coverings }) => coverings.includes('床'))).toEqual([]);
});

describe('what one stands on', () => {
  const big = fourHundredHouse(TODAY);
  const onUpper = (closed: Record<string, string>) =>
    listOf({ house: big, closed }).places.filter(({ level }) => level === '2F');
  const upperFloor = big.coverings.find(
    ({ kind, zone }) => kind === 'floor' && 'bottom' in zone && zone.bottom > 2000,
  );
  it('is the ground first: up there only what nobody sees from below', () => {
    const open = onUpper({});
    expect(new Set(open.map(({ footing }) => footing))).toEqual(new Set(['none']));
    // Rails of the ground floor are in sight from there, whatever stands above.
    const low = open.flatMap(shotsAt).filter(({ mark }) => mark.startsWith('1F') && mark.endsWith('貫'));
    expect(low).toEqual([]);
  });
  it('is a floor once one has closed, but for whoever stands outside', () => {
    if (!upperFloor) throw new Error('The house has no upper floor.');
    const upper = onUpper({ [upperFloor.name]: '2026-04-30T00:00:00.000Z' });
    const footings = upper.map(({ footing, before }) => [before?.outside ?? false, footing]);
    expect(footings).toContainEqual([false, 'floor']);
    expect(footings.filter(([outside, footing]) => (footing === 'floor') === outside)).toEqual([]);
  });
});

test('without a grid everything is listed by place, nothing dropped', () => {
  const list = listOf({ more: { reader: null } });
  expect(list).toMatchObject({ grid: null, places: [], unseen: [] });
  expect(list.placeless.flatMap(({ coverings }) => coverings)).toHaveLength(
    inventedClosings(barn, []).counts.gaps,
  );
});

describe('what two coverings ask for', () => {
  const [first] = barn.coverings.filter(({ name }) => name === '西の壁');
  if (!first) throw new Error('The barn has no west wall.');
  const doubled = (more: Partial<typeof first> = {}) => ({
    ...barn,
    coverings: [...barn.coverings, { ...first, name: '仕上げ', plannedDay: '2026-05-02', ...more }],
  });
  const once = shotsOf(listOf()).filter(({ coverings }) => coverings.includes('西の壁'));
  const twice = (house: InventedHouse) =>
    shotsOf(listOf({ house })).filter(({ coverings }) => coverings.includes('西の壁'));
  it('of one part is one shot, of whatever closes first first, by its day', () => {
    const shared = twice(doubled());
    expect(once.length).toBeGreaterThan(0);
    expect(shared.map(({ mark }) => mark).sort()).toEqual(once.map(({ mark }) => mark).sort());
    for (const { coverings } of shared) expect(coverings).toEqual(['仕上げ', '西の壁']);
    const places = listOf({ house: doubled() }).places.filter((place) =>
      shotsAt(place).some(({ coverings }) => coverings.includes('仕上げ')),
    );
    expect(new Set(places.map(({ closes }) => closes))).toEqual(new Set(['2026-05-02']));
  });
  it('of different parts is two', () => {
    const { zone } = first;
    if (zone.shape !== 'wall') throw new Error('The west wall is no wall.');
    const half = doubled({ zone: { ...zone, to: '二' } });
    const shots = twice(half).filter(({ coverings }) => coverings.length > 1);
    expect(shots.length).toBeLessThan(once.length);
  });
});

test('how everything asked for stands is told, also of what closed or closes later', () => {
  const closed = { 西の壁: '2026-04-30T00:00:00.000Z' };
  const { asked, places } = listOf({ closed, tags: [tag('い通り腰貫', 'plastered')], more: { days: 0 } });
  expect(places).toEqual([]);
  const told = asked.flatMap(({ id, lines }) =>
    lines.map(({ mark, state, missing }) => [id, mark, state, missing.length]),
  );
  const lines = inventedClosings(barn, [tag('い通り腰貫', 'plastered')], closed).days.flatMap(
    ({ coverings }) =>
      coverings.flatMap((one) =>
        one.lines.map(({ mark, state, missing }) => [one.id, mark, state, missing.length]),
      ),
  );
  expect(told).toEqual(lines);
  expect(new Set(told.map(([, , state]) => state)).size).toBeGreaterThan(1);
  expect(asked.filter(({ hasClosed }) => hasClosed).map(({ id }) => id)).toEqual(['西の壁']);
});

test('protection is told of while it lies', () => {
  const sheet = (id: string, laidAt: string, liftedAt: string | null): Protection => ({
    ...{ id, name: id, mark: 'い通り腰貫', stretch: { from: 0, to: 910 }, laidAt, liftedAt },
  });
  const protection = [
    sheet('second', '2026-04-29T00:00:00.000Z', null),
    sheet('first', '2026-04-28T00:00:00.000Z', '2026-05-03T00:00:00.000Z'),
    sheet('lifted', '2026-04-27T00:00:00.000Z', '2026-04-30T00:00:00.000Z'),
    sheet('to come', '2026-05-02T00:00:00.000Z', null),
  ];
  const { lying } = listOf({ more: { protection } });
  expect(lying.map(({ id, since }) => [id, since])).toEqual([
    ['first', '2026-04-28T00:00:00.000Z'],
    ['second', '2026-04-29T00:00:00.000Z'],
  ]);
});

test('a member whose place nobody knows stands apart', () => {
  const members = membersInSpace(barn).map(({ mark, axis }) => ({
    ...{ mark: mark as Mark, axis: mark === 'い通り腰貫' ? null : axis, retired: false, seen: [] },
  }));
  const { placeless } = listOf({ more: { members } });
  expect(placeless.map(({ mark, stretches }) => [mark, stretches])).toEqual([['い通り腰貫', []]]);
});

test('parts are named by the lines at their ends', () => {
  const rail = shotsOf(listOf()).filter(({ mark }) => mark === 'い通り腰貫');
  expect(rail.length).toBeGreaterThan(0);
  for (const { stretches } of rail)
    for (const { fromMark, toMark, start, end } of stretches) {
      const at = (label: string | null) =>
        reader.grid.second.lines.find((line) => line.label === label)?.at ?? NaN;
      expect([start.y, end.y]).toEqual([at(fromMark), at(toMark)]);
      expect([start.x, end.x]).toEqual([0, 0]);
    }
});
