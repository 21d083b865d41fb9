import type { FamilyName, LinePlace } from '../grid.ts';
import type { GridReader } from '../grid-reader.ts';
import type { Axis } from '../set-out.ts';
import { WALL_REACH_MM } from '../zone.ts';
import { among, OTHER_FAMILY } from './views.ts';

/**
 * The line or half line in whose plane a member lies, or null: no end farther from it than a wall reaches,
 * none nearer, and it runs along it rather than through.
 */
export function planeOf(axis: Axis, family: FamilyName, reader: GridReader): LinePlace | null {
  const [a, b] = [among(family, axis.start), among(family, axis.end)];
  const near = nearest((a + b) / 2, reader.places(family));
  if (!near || Math.max(Math.abs(a - near.at), Math.abs(b - near.at)) > WALL_REACH_MM) return null;
  return Math.abs(b - a) <= inPlane(axis, family) ? near : null;
}

/** How long a member is, seen square to the plane. */
function inPlane({ start, end }: Axis, family: FamilyName): number {
  const along = OTHER_FAMILY[family];
  return Math.hypot(among(along, end) - among(along, start), end.z - start.z);
}

function nearest(at: number, places: readonly LinePlace[]): LinePlace | null {
  return places.reduce<LinePlace | null>(
    (best, place) => (!best || Math.abs(place.at - at) < Math.abs(best.at - at) ? place : best),
    null,
  );
}

/** How far along itself a member goes through the plane of a line, in mm; null where it does not meet it. */
export function crossesAt({ start, end, length }: Axis, family: FamilyName, at: number): number | null {
  const [a, b] = [among(family, start), among(family, end)];
  if (Math.abs(b - a) < 1) return null;
  const share = (at - a) / (b - a);
  return share < -1e-6 || share > 1 + 1e-6 ? null : Math.min(1, Math.max(0, share)) * length;
}
