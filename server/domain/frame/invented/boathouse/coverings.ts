import { dayAfter, type InventedCovering } from '../invented-house.ts';
import { slope, wall, flat } from '../parts.ts';
import type { Lines } from './lines.ts';
import { HEIGHTS, SECTIONS, groundFloorOf, levelsOf, roofMeasures, type BoathouseSize } from './measures.ts';
import { gables, kneeWalls, lowerWalls, type WallRun } from './walls.ts';

/** Days after the raising on which each kind of work is planned: roof first, then walls, then floors. */
export const COVERING_DAYS = {
  roof: 8,
  lowerWall: 30,
  kneeWall: 37,
  gable: 42,
  floor: 45,
  finish: 52,
  loft: 48,
} as const;

/** What hides the frame, in the order of its days. */
export function coveringsOf(lines: Lines, size: BoathouseSize, firstDay: string): InventedCovering[] {
  const { westmost, eastmost, lakeside, hillside, slip } = lines;
  const day = (days: number) => dayAfter(firstDay, days);
  const at = (level: number, bottom: number, top: number) => ({ bottom: level + bottom, top: level + top });
  const ground = [westmost + lakeside, slip + hillside] as [string, string];
  const whole = [westmost + lakeside, eastmost + hillside] as [string, string];
  const walls = (runs: readonly WallRun[], from: number, [bottom, top]: readonly [number, number]) =>
    runs.map(({ family, line, from: start, to, name }, i): InventedCovering => ({
      ...{ name: `${name} 荒壁`, kind: 'plaster', plannedDay: day(from + i) },
      zone: wall('between-posts', family, [line, start, to], [bottom, top]),
    }));
  const { '1F': floor, '2F': loft } = levelsOf(size);
  return [
    ...roofs(lines, size, day),
    ...walls(lowerWalls(lines), COVERING_DAYS.lowerWall, [floor, floor + groundFloorOf(size).wall]),
    ...(loft === undefined
      ? []
      : walls(kneeWalls(lines), COVERING_DAYS.kneeWall, [loft, loft + HEIGHTS.upperWall])),
    ...(loft === undefined ? [] : gables(lines)).map(
      ({ family, line, from, to, name }, i): InventedCovering => ({
        ...{ name: `${name} 板張り`, kind: 'other', plannedDay: day(COVERING_DAYS.gable + i) },
        zone: wall('over-posts', family, [line, from, to], [loft ?? 0, levelsOf(size)['軒']]),
      }),
    ),
    {
      ...{ name: '一階 荒床', kind: 'floor', plannedDay: day(COVERING_DAYS.floor) },
      zone: flat({ corners: ground, ...at(floor, -SECTIONS.joist[1] - 200, -30) }),
    },
    ...(loft === undefined
      ? []
      : [loftFloor(day(COVERING_DAYS.loft), whole, at(loft, -SECTIONS.joist[1] - 200, 0))]),
    {
      ...{ name: '一階 床板', kind: 'floor', plannedDay: day(COVERING_DAYS.finish) },
      zone: flat({ corners: ground, ...at(floor, -SECTIONS.joist[1] - 200, 0) }),
    },
  ];
}

function loftFloor(
  plannedDay: string,
  corners: [string, string],
  heights: { bottom: number; top: number },
): InventedCovering {
  return { ...{ name: '二階 床板', kind: 'floor', plannedDay }, zone: flat({ corners, ...heights }) };
}

function roofs(lines: Lines, size: BoathouseSize, day: (days: number) => string): InventedCovering[] {
  const { westmost, eastmost, lakeside, hillside, ridge, across } = lines;
  const { rafter } = roofMeasures(size);
  const over = (halfBays: number) => levelsOf(size)['軒'] + rafter(halfBays) + SECTIONS.rafter[1];
  return [
    ['湖側', lakeside],
    ['山側', hillside],
  ].map(([name = '', eaves = ''], i): InventedCovering => ({
    ...{ name: `${name}の屋根 野地板`, kind: 'roof-boards', plannedDay: day(COVERING_DAYS.roof + i) },
    zone: slope({
      ...{ family: 'second', eaves, ridge, from: westmost, to: eastmost },
      ...{ eavesHeight: over(0), ridgeHeight: over(across.indexOf(ridge)), below: 250 },
    }),
  }));
}
