import type { Mm } from '#domain/frame/length';
import { gridReader, type GridReader } from '#domain/frame/grid-reader';
import type { Axis } from '#domain/frame/set-out';
import { STAGES } from '#domain/frame/stage';
import type { ClosingReportInput } from '#domain/record/closing-report';
import { BUILT_IN } from '#domain/lexicon/lexicon';
import {
  hiddenByZones,
  type HiddenByZone,
  type MemberInSpace,
  type ZonedCovering,
} from '#domain/record/zone-hides';

export const BAY = 1820;
const LINES = 40;
const RAIL = BUILT_IN.byId.get('nuki') ?? null;

const labels = (letter: string) =>
  Array.from({ length: LINES }, (_, i) => ({ label: `${letter}${String(i + 1)}`, at: (i * BAY) as Mm }));

export const READER: GridReader = gridReader({
  first: { lines: labels('x'), runs: 'leftward' },
  second: { lines: labels('y'), runs: 'downward' },
  levels: [{ label: '1F', height: 450 as Mm }],
});

const FACES = ['both', 'lower', 'higher'] as const;

/** Rails of three bays on lines of the grid, at eight heights. */
export function railsInSpace(count: number): MemberInSpace[] {
  return Array.from({ length: count }, (_, i) => ({
    ...{ mark: `R${String(i)}`, kind: RAIL, track: 'wall' as const, axis: axisOfRail(i) },
  }));
}

function axisOfRail(i: number): Axis {
  const place = Math.floor(i / 8);
  const [x, y] = [(place % LINES) * BAY, (Math.floor(place / LINES) % (LINES - 3)) * BAY];
  const z = (600 + (i % 8) * 300) as Mm;
  return {
    start: { x: x as Mm, y: y as Mm, z },
    end: { x: x as Mm, y: (y + 3 * BAY) as Mm, z },
    ...{ length: (3 * BAY) as Mm, width: 15 as Mm, depth: 105 as Mm },
    ...{ runs: 'level', level: '1F', assumed: [] },
  };
}

/** Walls of two bays, each on a line of its own until they come round. */
export function wallsInSpace(count: number): ZonedCovering[] {
  return Array.from({ length: count }, (_, i) => {
    const from = 1 + (Math.floor(i / LINES) % (LINES - 2));
    return {
      id: `W${String(i)}`,
      kind: 'plaster' as const,
      except: new Set<string>(),
      zone: {
        ...{ shape: 'wall' as const, family: 'first' as const, line: `x${String(1 + (i % LINES))}` },
        ...{ from: `y${String(from)}`, to: `y${String(from + 2)}`, bottom: 450, top: 3250 },
        ...{ face: 'both' as const, over: 'between-posts' as const },
      },
    };
  });
}

export function hide(
  members: readonly MemberInSpace[],
  walls: readonly ZonedCovering[],
): Map<string, HiddenByZone[]> {
  return hiddenByZones(walls, members, READER, []);
}

/**
 * Twenty tags a member, each on a stretch of one bay; a covering for each dozen members, as zones hide them, every
 * third on both faces of its wall, and each a layer beside those that share a bay with it.
 */
export function frameHouse(memberCount: number): ClosingReportInput {
  const members = railsInSpace(memberCount);
  const walls = wallsInSpace(Math.ceil((memberCount * 8) / 100));
  const hidden = hide(members, walls);
  return {
    members: members.map(({ mark, axis }) => ({ mark, kind: '貫', place: '1F', retired: false, axis })),
    coverings: walls.map(({ id, kind, zone }, i) => ({
      zone: zone.shape === 'wall' ? { ...zone, face: FACES[i % 3] ?? 'both' } : zone,
      ...{ id, name: id, kind, plannedDay: `2026-05-${String((i % 28) + 1).padStart(2, '0')}` },
      ...{ closedAt: null, closedDay: null, hides: hidden.get(id) ?? [] },
    })),
    tags: Array.from({ length: memberCount * 20 }, (_, i) => {
      const bay = Math.floor(i / memberCount) % 3;
      return {
        ...{ id: `t${String(i)}`, photo: `p${String(i)}`, mark: `R${String(i % memberCount)}` },
        ...{ stage: STAGES[1 + (i % 3)] ?? 'pegged', stretch: { from: bay * BAY, to: (bay + 1) * BAY } },
        instant: new Date(Date.UTC(2026, 3, 1, 0, i % 40_000)).toISOString(),
        ...{ uncertaintyS: 60, datedBy: 'file' as const, doubt: null, legibility: null, findings: [] },
      };
    }),
    ...{ asOf: '2026-05-01T00:00:00.000Z', today: '2026-05-01', reader: READER },
  };
}
