import type { NamedStretch } from '../contract/report-views.ts';
import type { Stretch } from '../record/stretches.ts';
import { pointOn } from './axis-of.ts';
import type { FamilyName, LinePlace } from './grid.ts';
import type { GridReader } from './grid-reader.ts';
import type { ShownStretch } from '../contract/frame-shapes.ts';
import type { Axis } from './set-out.ts';

/** What lies so near a line is at it: half a post. Common practice. */
const AT_LINE_MM = 75;

/**
 * A stretch with the lines at its ends, named by the family that the member runs along: a rail on ほ is
 * named from 二 to 三. null where no line is near, or it stands or runs askew.
 */
export function nameStretch(stretch: Stretch, axis: Axis | null, reader: GridReader | null): NamedStretch {
  const nameOf = (along: number) => (axis && reader ? lineNear(along, axis, reader) : null);
  return { ...stretch, fromMark: nameOf(stretch.from), toMark: nameOf(stretch.to) };
}

function lineNear(along: number, axis: Axis, reader: GridReader): string | null {
  const family = familyAlong(axis);
  if (family === null) return null;
  const point = pointOn(axis, along);
  const here = family === 'first' ? point.x : point.y;
  const near = reader.places(family).reduce<LinePlace | null>((best, place) => {
    const off = Math.abs(place.at - here);
    return off <= AT_LINE_MM && (!best || off < Math.abs(best.at - here)) ? place : best;
  }, null);
  return near && near.label;
}

/** The family whose lines a member crosses one after the other; null for what stands or runs askew. */
export function familyAlong({ start, end, runs }: Axis): FamilyName | null {
  if (runs === 'upright') return null;
  const [dx, dy] = [Math.abs(end.x - start.x), Math.abs(end.y - start.y)];
  if (dx > 10 * dy) return 'first';
  return dy > 10 * dx ? 'second' : null;
}

/**
 * What a person says of a part of a member (from 二 to 三, from い二 to い三) in mm from its start, or null
 * where that names no part of it. What lies beyond its ends is cut off.
 */
export function stretchBetween(shown: ShownStretch, axis: Axis, reader: GridReader): Stretch | null {
  const [a, b] = [along(shown.from, axis, reader), along(shown.to, axis, reader)];
  if (a === null || b === null) return null;
  const [from, to] = [Math.max(0, Math.min(a, b)), Math.min(axis.length, Math.max(a, b))];
  return to - from >= 1 ? { from, to } : null;
}

/** Where a line or crossing lies along an axis: its foot on the axis in plan. */
function along(text: string, axis: Axis, reader: GridReader): number | null {
  const { start, end, length } = axis;
  const [dx, dy] = [end.x - start.x, end.y - start.y];
  const plan = Math.hypot(dx, dy);
  if (plan < 1) return null;
  const crossing = reader.crossing(text);
  if (crossing.ok) {
    const { x, y } = crossing.value;
    return (((x - start.x) * dx + (y - start.y) * dy) / plan ** 2) * length;
  }
  const family = familyAlong(axis);
  const line = family && reader.line(text, family);
  if (!line?.ok) return null;
  return (
    ((family === 'first' ? line.value.at - start.x : line.value.at - start.y) /
      (family === 'first' ? dx : dy)) *
    length
  );
}
