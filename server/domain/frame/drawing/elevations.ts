import type { FamilyName, LinePlace } from '../grid.ts';
import { gridReader, type GridReader } from '../grid-reader.ts';
import type { Axis } from '../set-out.ts';
import { cornersOf, boxAround, type Box, type Flat, type Strip } from './flat.ts';
import { crossesAt, planeOf } from './planes.ts';
import { elevationCut } from './section-strip.ts';
import { sheetKey, type Drawable, type DrawnMember, type DrawnZone, type Rule, type Sheet } from './sheet.ts';
import { elevationView, OTHER_FAMILY, rightward, seenSide } from './views.ts';
import { zoneCut } from './zone-outline.ts';

const FAMILIES = ['first', 'second'] as const;

/** The elevation of each line and half line in whose plane a member lies, in the order of the grid. */
export function elevations(frame: Drawable): Sheet[] {
  const { grid } = frame;
  if (!grid) return [];
  const reader = gridReader(grid);
  return FAMILIES.flatMap((family) => {
    const standing = new Set(
      frame.members.flatMap(({ axis }) => (axis ? (planeOf(axis, family, reader)?.label ?? []) : [])),
    );
    return reader
      .places(family)
      .filter(({ label }) => standing.has(label))
      .map((line) => elevation(frame, family, line, reader));
  });
}

/** One elevation, also of a line without members. */
export function elevation(frame: Drawable, family: FamilyName, line: LinePlace, reader: GridReader): Sheet {
  const { grid } = reader;
  const members = frame.members.flatMap(({ mark, axis }) =>
    axis ? (inElevation(mark, axis, family, line, reader) ?? []) : [],
  );
  const sign = rightward(grid, OTHER_FAMILY[family]);
  const upright = grid[OTHER_FAMILY[family]].lines.map(({ label, at }): Rule => ({
    label,
    at: sign * at,
    stated: at,
  }));
  const level = grid.levels.map(({ label, height }): Rule => ({ label, at: 0 - height, stated: height }));
  const zones = zonesIn(frame, family, line, sign, reader);
  const subject = { kind: 'elevation', family, line } as const;
  const bounds = boundsOf(upright, level, members, zones);
  const seenFrom = seenSide(grid, family);
  return { key: sheetKey(subject), subject, seenFrom, upright, level, members, zones, bounds };
}

function inElevation(
  mark: string,
  axis: Axis,
  family: FamilyName,
  line: LinePlace,
  reader: GridReader,
): DrawnMember | null {
  const view = elevationView(reader.grid, family);
  const about = { mark, length: axis.length };
  if (planeOf(axis, family, reader)?.label === line.label)
    return { ...about, ...lying(axis, family, view), cutAt: null };
  const cutAt = crossesAt(axis, family, line.at);
  return cutAt === null ? null : { ...about, ...elevationCut(axis, cutAt, family, view), cutAt };
}

function lying(axis: Axis, family: FamilyName, view: (point: Axis['start']) => Flat): Strip {
  // What stands shows the side of its section that runs along the line.
  const thick = axis.runs === 'upright' && family === 'second' ? axis.width : axis.depth;
  return { from: view(axis.start), to: view(axis.end), half: thick / 2 };
}

function zonesIn(
  frame: Drawable,
  family: FamilyName,
  line: LinePlace,
  sign: number,
  reader: GridReader,
): DrawnZone[] {
  return frame.coverings.flatMap(({ id, zone }) => {
    // A wall across the line is a stroke on it that says nothing.
    if (!zone || (zone.shape === 'wall' && zone.family !== family)) return [];
    const corners = zoneCut(zone, family, line.at, reader).map(([along, z]) => ({ u: sign * along, v: -z }));
    return corners.length > 2 ? [{ covering: id, corners }] : [];
  });
}

export function boundsOf(
  upright: readonly Rule[],
  level: readonly Rule[],
  members: readonly Strip[],
  zones: readonly DrawnZone[],
): Box {
  const middle: Flat = { u: upright[0]?.at ?? 0, v: level[0]?.at ?? 0 };
  const points = [
    ...upright.map(({ at }) => ({ u: at, v: middle.v })),
    ...level.map(({ at }) => ({ u: middle.u, v: at })),
    ...members.flatMap((member) => cornersOf(member)),
    ...zones.flatMap(({ corners }) => corners),
  ];
  return boxAround(points) ?? { left: 0, top: 0, right: 0, bottom: 0 };
}
