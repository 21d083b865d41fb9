import type { Level } from '../grid.ts';
import { gridReader, type GridReader } from '../grid-reader.ts';
import type { Axis } from '../set-out.ts';
import type { Zone } from '../zone.ts';
import { boundsOf } from './elevations.ts';
import type { Strip } from './flat.ts';
import { levelStrip } from './section-strip.ts';
import { sheetKey, type Drawable, type DrawnMember, type DrawnZone, type Rule, type Sheet } from './sheet.ts';
import { planView, rightward } from './views.ts';
import { zoneShadow } from './zone-outline.ts';

/** A plan looks down from a little above its level and cuts what stands there. Common practice. */
const CUT_ABOVE_MM = 300;

/** The plan of each level; of the whole where no level is stated. */
export function plans(frame: Drawable): Sheet[] {
  const { grid } = frame;
  if (!grid) return [];
  const reader = gridReader(grid);
  const levels = grid.levels.length > 0 ? grid.levels : [null];
  return levels.map((level) => plan(frame, level, reader));
}

export function plan(frame: Drawable, level: Level | null, reader: GridReader): Sheet {
  const { grid } = reader;
  const view = planView(grid);
  const members = frame.members.flatMap(({ mark, axis }): DrawnMember[] =>
    axis && isOn(axis, level) ? [{ mark, length: axis.length, ...fromAbove(axis, level, reader) }] : [],
  );
  const right = rightward(grid, 'first');
  const upright = grid.first.lines.map(({ label, at }): Rule => ({ label, at: right * at, stated: at }));
  const rows = grid.second.lines.map(({ label, at }): Rule => ({
    label,
    at: view({ x: at, y: at }).v,
    stated: at,
  }));
  const zones = frame.coverings.flatMap((covering): DrawnZone[] => {
    if (!covering.zone || !isZoneOn(covering.zone, level, grid.levels)) return [];
    const corners = zoneShadow(covering.zone, reader).map(([x, y]) =>
      view({ x: x as Axis['start']['x'], y: y as Axis['start']['y'] }),
    );
    return corners.length > 2 ? [{ covering: covering.id, corners }] : [];
  });
  const subject = { kind: 'plan', level } as const;
  const bounds = boundsOf(upright, rows, members, zones);
  return { key: sheetKey(subject), subject, seenFrom: null, upright, level: rows, members, zones, bounds };
}

function isOn(axis: Axis, level: Level | null): boolean {
  if (!level || axis.level === level.label) return true;
  return axis.runs === 'upright' && cutHeight(axis, level) !== null;
}

function cutHeight({ start, end }: Axis, level: Level): number | null {
  const height = level.height + CUT_ABOVE_MM;
  return start.z <= height && height <= end.z ? height : null;
}

function fromAbove(axis: Axis, level: Level | null, { grid }: GridReader): Strip & { cutAt: number | null } {
  const view = planView(grid);
  if (axis.runs !== 'upright')
    return { from: view(axis.start), to: view(axis.end), half: axis.width / 2, cutAt: null };
  const height = level && cutHeight(axis, level);
  return {
    ...levelStrip(view(axis.start), axis.width, axis.depth),
    cutAt: height === null ? 0 : height - axis.start.z,
  };
}

/** So near below or above its level a floor ends, boards and finish included. Common practice. */
const FLOOR_MM = 100;

/** A floor belongs to the level that it makes, all else to that within whose height it begins. */
function isZoneOn(zone: Zone, level: Level | null, levels: readonly Level[]) {
  if (!level) return true;
  const made = zone.shape === 'flat' && levels.find(({ height }) => Math.abs(zone.top - height) <= FLOOR_MM);
  if (made) return made.label === level.label;
  const bottom = zone.shape === 'slope' ? zone.eavesHeight - zone.below : zone.bottom;
  const own = levels.findLast(({ height }) => height <= bottom + CUT_ABOVE_MM) ?? levels[0];
  return own?.label === level.label;
}
