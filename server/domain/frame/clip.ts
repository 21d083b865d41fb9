import type { Stretch } from '../record/stretches.ts';
import type { Axis, Point } from './set-out.ts';

/** All points with normal · p ≤ limit; in mm. */
export interface HalfSpace {
  readonly normal: readonly [x: number, y: number, z: number];
  readonly limit: number;
}

/** A convex body as the points that lie in all of these. */
export type Convex = readonly HalfSpace[];

/** Below this a line runs along a plane; normals are of length one, directions of mm a mm. */
const PARALLEL = 1e-9;

/**
 * The stretch of an axis inside a convex body, its surface included, or null: Cyrus and Beck, "Generalized
 * two- and three-dimensional clipping", Computers & Graphics 3 (1978). Touching in one point is nothing.
 */
export function clipAxis(axis: Axis, body: Convex): Stretch | null {
  const direction = directionOf(axis);
  let [from, to] = [0, axis.length as number];
  for (const { normal, limit } of body) {
    const speed = dot(normal, direction);
    const room = limit - dot(normal, [axis.start.x, axis.start.y, axis.start.z]);
    if (Math.abs(speed) < PARALLEL) {
      if (room < -TOUCHING_MM) return null;
    } else if (speed > 0) to = Math.min(to, room / speed);
    else from = Math.max(from, room / speed);
    if (from >= to) return null;
  }
  return { from, to };
}

/** Grid lines in sun and shaku are no whole millimetres: what lies in a surface is inside. */
const TOUCHING_MM = 0.01;

export function directionOf({ start, end, length }: Axis): [number, number, number] {
  return [(end.x - start.x) / length, (end.y - start.y) / length, (end.z - start.z) / length];
}

export function dot(a: readonly [number, number, number], b: readonly [number, number, number]): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function isInside({ x, y, z }: Point, body: Convex): boolean {
  return body.every(({ normal, limit }) => dot(normal, [x, y, z]) <= limit + TOUCHING_MM);
}
