import { cross, directionOf, dot, type Convex, type Triple } from './clip.ts';
import type { Axis } from './set-out.ts';

/**
 * A member as the box of its section about its axis, in house coordinates (mm). Width and depth as in
 * SetOut: along x and y of what stands; across and upward of what lies or slopes.
 */
export function memberBody(axis: Axis): Convex {
  const along = directionOf(axis);
  const across = axis.runs === 'upright' ? squareTo(along, [1, 0, 0]) : unit([-along[1], along[0], 0]);
  const upward = cross(along, across);
  const start: Triple = [axis.start.x, axis.start.y, axis.start.z];
  const slab = (normal: Triple, before: number, behind: number) => [
    { normal, limit: dot(normal, start) + behind },
    { normal: scaled(normal, -1), limit: before - dot(normal, start) },
  ];
  return [
    ...slab(along, 0, axis.length),
    ...slab(across, axis.width / 2, axis.width / 2),
    ...slab(upward, axis.depth / 2, axis.depth / 2),
  ];
}

const scaled = ([x, y, z]: Triple, by: number): Triple => [x * by, y * by, z * by];
const unit = (v: Triple) => scaled(v, 1 / Math.sqrt(dot(v, v)));

/** What of `v` stands square to a direction. */
function squareTo(direction: Triple, v: Triple): Triple {
  const [x, y, z] = scaled(direction, dot(direction, v));
  return unit([v[0] - x, v[1] - y, v[2] - z]);
}
