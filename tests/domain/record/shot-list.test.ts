import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { opaqueBody } from '#domain/frame/opaque-body';
import type { Zone } from '#domain/frame/zone';
import { zoneBody } from '#domain/frame/zone-body';
import { shotList, type MissingStretch, type Shot, type ShotListInput } from '#domain/record/shot-list';
import { sightThrough, targetOf, type FrameMember } from '#domain/record/sight';
import { standingPlaces } from '#domain/record/standing-places';
import { bayPieces } from '#domain/record/bay-pieces';
import { lengthOf, unionOf } from '#domain/record/stretches';
import { axisBetween, BAY, someReader } from '../../support/some-grid.ts';

const FLOOR = 450;
const post = (x: number, y: number): FrameMember => ({
  mark: `post ${x} ${y}`,
  axis: axisBetween([x * BAY, y * BAY, FLOOR], [x * BAY, y * BAY, 3250], [120, 120]),
});
const rail = (x: number, height: number, from = 0, to = 5): FrameMember => ({
  mark: `rail ${x} ${height}`,
  axis: axisBetween([x * BAY, from * BAY, FLOOR + height], [x * BAY, to * BAY, FLOOR + height], [15, 105]),
});
const all = [0, 1, 2, 3, 4, 5];
const posts = all.flatMap((x) => all.map((y) => post(x, y)));
const wholly = (member: FrameMember, closes: string | null = null, covering = 'wall'): MissingStretch => ({
  ...member,
  covering,
  closes,
  stretch: { from: 0, to: member.axis.length },
});
const list = (input: Partial<ShotListInput>) =>
  shotList({ reader: someReader, missing: [], opaque: [], members: posts, ...input });

function closed(face: 'both' | 'lower' | 'higher', line: string) {
  const zone: Zone = {
    shape: 'wall',
    family: 'first',
    line,
    from: '一',
    to: '六',
    bottom: 0,
    top: 6000,
    face,
    over: 'over-posts',
  };
  const read = opaqueBody(zone, someReader);
  if (!read.ok) throw new Error(read.problem.reason);
  return read.body;
}

describe('the shot list', () => {
  it('of nothing is nothing', () => expect(list({})).toEqual({ places: [], unseen: [] }));

  it('takes three rails of one bay from one place, and says where that is', () => {
    const rails = [900, 1500, 2100].map((height) => rail(0, height, 2, 3));
    const { places, unseen } = list({ missing: rails.map((one) => wholly(one, '2026-05-09')) });
    expect(unseen).toEqual([]);
    expect(places).toHaveLength(1);
    expect(places[0]).toMatchObject({
      level: '1F',
      between: ['い三', 'ろ四'],
      before: null,
      looks: [{ family: 'first', line: 'い' }],
      closes: '2026-05-09',
      shots: rails.map(({ mark }) => ({
        mark,
        covering: 'wall',
        closes: '2026-05-09',
        stretches: [{ from: 0, to: BAY }],
      })),
    });
  });

  it('goes along a rail bay by bay where there is no room to step back', () => {
    const { places } = list({ missing: [wholly(rail(0, 1200))], opaque: [closed('both', 'ろ')] });
    expect(places.map(({ between }) => between[0])).toEqual(['い一', 'い二', 'い三', 'い四', 'い五']);
    expect(places.flatMap(({ shots }) => shots.flatMap(({ stretches }) => stretches))).toEqual(
      all.slice(1).map((bay) => ({ from: (bay - 1) * BAY, to: bay * BAY })),
    );
  });

  it('takes several bays at once from farther back', () =>
    expect(list({ missing: [wholly(rail(0, 1200))], members: [] }).places.length).toBeLessThan(4));

  it('stands where a wall is still open', () => {
    const missing = [wholly(rail(2, 1200, 1, 2))];
    const sides = (face: 'lower' | 'higher') =>
      list({ missing, opaque: [closed(face, 'は')] }).places.map(({ eye }) => Math.sign(eye.x - 2 * BAY));
    expect([sides('lower'), sides('higher')]).toEqual([[1], [-1]]);
  });

  it('goes outside where the inside has closed', () => {
    const { places } = list({ missing: [wholly(rail(0, 1200, 1, 2))], opaque: [closed('higher', 'い')] });
    expect(places).toHaveLength(1);
    expect(places[0]?.before).toEqual({ family: 'first', line: 'い', side: 'lower', outside: true });
  });

  it('says what can be seen from nowhere, and why', () => {
    const far: FrameMember = { mark: 'far', axis: axisBetween([0, 0, 20_000], [BAY, 0, 20_000], [120, 120]) };
    const { places, unseen } = list({
      missing: [wholly(rail(2, 1200, 1, 2), '2026-05-09'), wholly(far)],
      opaque: [closed('both', 'は')],
    });
    expect(places).toEqual([]);
    expect(unseen).toEqual([
      {
        mark: 'rail 2 1200',
        covering: 'wall',
        closes: '2026-05-09',
        stretches: [{ from: 0, to: BAY }],
        reason: 'blocked',
      },
      {
        mark: 'far',
        covering: 'wall',
        closes: null,
        stretches: [{ from: 0, to: BAY }],
        reason: 'out-of-reach',
      },
    ]);
  });

  it('looks up to what is overhead, and names the earliest day', () => {
    const beam: FrameMember = {
      mark: 'beam',
      axis: axisBetween([0, 0.5 * BAY, 3250], [BAY, 0.5 * BAY, 3250], [120, 240]),
    };
    const { places } = list({
      missing: [wholly(beam, '2026-05-12', 'ceiling'), wholly(beam, '2026-05-10', 'floor')],
    });
    expect(places).toHaveLength(1);
    expect(places[0]?.closes).toBe('2026-05-10');
    expect(places[0]?.level === '1F' ? places[0].looks : ['up']).toEqual(['up']);
  });

  it('walks one level after the other, each once', () => {
    const upper = (x: number): FrameMember => ({
      mark: `upper ${x}`,
      axis: axisBetween([x * BAY, 2 * BAY, 4400], [x * BAY, 3 * BAY, 4400], [15, 105]),
    });
    const floor = zoneBody({ shape: 'flat', corners: ['い一', 'へ六'], bottom: 3150, top: 3250 }, someReader);
    const { places } = list({
      missing: [upper(3), rail(3, 900), rail(2, 900), upper(2)].map((one) => wholly(one)),
      opaque: floor.ok ? [floor.body] : [],
    });
    const levels = places.map(({ level }) => level);
    expect(new Set(levels)).toEqual(new Set(['1F', '2F']));
    expect(levels).toEqual(levels.toSorted());
  });
});

/** Some stretches of a random frame; posts are missing here and there, so that sight lines pass. */
const frame = fc.record({
  standing: fc.subarray(posts),
  rails: fc.uniqueArray(
    fc.record({
      x: fc.nat(5),
      height: fc.integer({ min: 0, max: 2700 }),
      from: fc.nat(4),
      bays: fc.integer({ min: 1, max: 5 }),
    }),
    { maxLength: 8, selector: ({ x, height }) => `${x} ${height}` },
  ),
  shut: fc.subarray(['い', 'ろ', 'は', 'に', 'ほ', 'へ'], { maxLength: 2 }),
  face: fc.constantFrom('both' as const, 'lower' as const, 'higher' as const),
});

test('every piece stands at one place that sees it, or is said to be unseen; in the same order each time', () => {
  fc.assert(
    fc.property(frame, ({ standing, rails, shut, face }) => {
      const missing = rails.map(({ x, height, from, bays }) =>
        wholly(rail(x, height, from, Math.min(5, from + bays))),
      );
      const input: ShotListInput = {
        reader: someReader,
        missing,
        opaque: shut.map((line) => closed(face, line)),
        members: [...standing, ...missing],
      };
      const { places, unseen } = shotList(input);
      expect(
        shotList({ ...input, members: input.members.toReversed(), opaque: input.opaque.toReversed() }),
      ).toEqual({
        places,
        unseen,
      });
      const sight = sightThrough(input.opaque, input.members);
      for (const one of missing) {
        const seen = places.flatMap((place) => place.shots.filter(({ mark }) => mark === one.mark));
        const told = [...seen, ...unseen.filter(({ mark }) => mark === one.mark)].flatMap(
          ({ stretches }) => stretches,
        );
        expect(unionOf(told)).toEqual([one.stretch]);
        expect(told.reduce((sum, { from, to }) => sum + to - from, 0)).toBeCloseTo(lengthOf(told), 6);
        for (const { eye, shots } of places)
          for (const piece of bayPieces(one.axis, one.stretch, someReader.grid)) {
            const isHere = shots.some(
              ({ mark, stretches }) =>
                mark === one.mark && stretches.some(({ from, to }) => from <= piece.from && piece.to <= to),
            );
            if (!isHere) continue;
            const target = targetOf(one, piece);
            const far = ({ x, y, z }: typeof eye) =>
              Math.hypot(x - target.middle[0], y - target.middle[1], z - target.middle[2]);
            const able = places.filter((other) => sight.look(other.eye, target) === 'seen');
            expect(able.map((other) => other.eye)).toContainEqual(eye);
            expect(far(eye)).toBe(Math.min(...able.map((other) => far(other.eye))));
          }
      }
      expect(places.every(({ shots, looks }) => shots.length > 0 && looks.length > 0)).toBe(true);
    }),
    { numRuns: 25 },
  );
});

test('from unsure ground only what nobody sees from firm one, and unseen only what nobody sees at all', () => {
  const isFirm = ({ level }: { level: string | null }) => level === '1F';
  fc.assert(
    fc.property(frame, ({ standing, rails, shut, face }) => {
      const missing = rails.map(({ x, height, from, bays }) => {
        // Some of them on the upper floor, where those below cannot look.
        const one = rail(x, height * 2, from, Math.min(5, from + bays));
        return wholly({ ...one, mark: `${one.mark} ${height}` });
      });
      const opaque = shut.map((line) => closed(face, line));
      const members = [...standing, ...missing];
      const { places, unseen } = shotList({ reader: someReader, missing, opaque, members, isFirm });
      const sight = sightThrough(opaque, members);
      const all = standingPlaces(someReader).filter(({ eye }) => sight.hasRoom(eye));
      const seenFrom = (from: typeof all, shots: readonly Shot[]) =>
        shots.flatMap((shot) => {
          const one = missing.find(({ mark }) => mark === shot.mark);
          const pieces = one ? bayPieces(one.axis, one.stretch, someReader.grid) : [];
          return pieces.filter(
            (piece) =>
              one &&
              shot.stretches.some(({ from: start, to }) => start <= piece.from && piece.to <= to) &&
              from.some(({ eye }) => sight.look(eye, targetOf(one, piece)) === 'seen'),
          );
        });
      expect(seenFrom(all, unseen)).toEqual([]);
      const unsure = places.filter((place) => !isFirm(place)).flatMap(({ shots }) => shots);
      expect(seenFrom(all.filter(isFirm), unsure)).toEqual([]);
    }),
    { numRuns: 15 },
  );
});

/** Two storeys of six lines each way: 72 posts, 36 beams, 96 rails, 100 joists, 96 rafters. */
function wholeHouse(): FrameMember[] {
  const ends = [0, 5 * BAY] as const;
  const alongX = (y: number, z: number, section: readonly [number, number]): FrameMember['axis'] =>
    axisBetween([ends[0], y, z], [ends[1], y, z], section);
  const alongY = (x: number, z: number, section: readonly [number, number]): FrameMember['axis'] =>
    axisBetween([x, ends[0], z], [x, ends[1], z], section);
  const storeys = [450, 3250];
  const axes = [
    ...posts.map(({ axis }) => axis),
    ...all.flatMap((x) =>
      all.map((y) => axisBetween([x * BAY, y * BAY, 3250], [x * BAY, y * BAY, 6000], [120, 120])),
    ),
    ...[450, 3250, 6000].flatMap((z) =>
      all.flatMap((i) => [alongX(i * BAY, z, [120, 240]), alongY(i * BAY, z, [120, 240])]),
    ),
    ...storeys.flatMap((z) =>
      all.flatMap((i) =>
        [300, 900, 1500, 2100].flatMap((up) => [
          alongX(i * BAY, z + up, [15, 105]),
          alongY(i * BAY, z + up, [15, 105]),
        ]),
      ),
    ),
    ...storeys.flatMap((z) => Array.from({ length: 50 }, (_, i) => alongY(i * 182, z, [45, 60]))),
    ...Array.from({ length: 48 }, (_, i) => [
      axisBetween([0, i * 190, 6000], [2.5 * BAY, i * 190, 7820], [45, 60]),
      axisBetween([5 * BAY, i * 190, 6000], [2.5 * BAY, i * 190, 7820], [45, 60]),
    ]).flat(),
  ];
  return axes.map((axis, i) => ({ mark: `${i}`, axis }));
}

test('of 300 missing stretches in a house of 400 members it is made at once', () => {
  const members = wholeHouse();
  expect(members).toHaveLength(400);
  const missing = members.slice(100).map((one) => wholly(one, '2026-05-09'));
  const before = process.cpuUsage();
  const { places, unseen } = list({ missing, opaque: [closed('lower', 'ろ')], members });
  // Half a second of work, whatever else the machine does meanwhile.
  expect(process.cpuUsage(before).user / 1000).toBeLessThan(2000);
  expect(places.length).toBeGreaterThan(5);
  expect(unseen.length).toBeLessThan(100);
});
