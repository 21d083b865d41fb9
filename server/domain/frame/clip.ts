import type { Stretch } from '../record/stretches.ts';
import type { Axis, Point } from './set-out.ts';

export type Triple = readonly [x: number, y: number, z: number];

/** All points with normal · p ≤ limit; in mm. */
export interface HalfSpace {
  readonly normal: Triple;
  readonly limit: number;
}

/** A convex body as the points that lie in all of these. */
export type Convex = readonly HalfSpace[];

/** Grid lines in sun and shaku are no whole millimetres: what lies in a surface is inside. */
const TOUCHING_MM = 0.01;

/**
 * The stretch of an axis inside a convex body, its surface included, or null: Cyrus and Beck, "Generalized
 * two- and three-dimensional clipping", Computers & Graphics 3 (1978). Touching in one point is nothing.
 */
export function clipAxis(axis: Axis, body: Convex): Stretch | null {
  return clipLine([axis.start.x, axis.start.y, axis.start.z], directionOf(axis), axis.length, body);
}

/** The same of any straight line, by its start, its direction of length one, and its length in mm. */
export function clipLine(start: Triple, direction: Triple, length: number, body: Convex): Stretch | null {
  let [from, to] = [0, length];
  for (const { normal, limit } of body) {
    const speed = dot(normal, direction);
    const room = limit - dot(normal, start);
    // Along a surface but for rounding: cut by it, a rafter in the plane of its roof would end anywhere.
    if (Math.abs(speed) * length < TOUCHING_MM) {
      if (room < -TOUCHING_MM) return null;
    } else if (speed > 0) to = Math.min(to, room / speed);
    else from = Math.max(from, room / speed);
    if (from >= to) return null;
  }
  return { from, to };
}

export function directionOf({ start, end, length }: Axis): Triple {
  return [(end.x - start.x) / length, (end.y - start.y) / length, (end.z - start.z) / length];
}

export function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross([ax, ay, az]: Triple, [bx, by, bz]: Triple): Triple {
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
}

export function isInside({ x, y, z }: Point, body: Convex): boolean {
  return body.every(({ normal, limit }) => dot(normal, [x, y, z]) <= limit + TOUCHING_MM);
}
