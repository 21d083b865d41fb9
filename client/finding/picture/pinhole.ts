import type { Point } from '#domain/frame/set-out';

/**
 * Where a camera stood and how it was held: metres in the house, angles in radians (yaw from x to y, pitch upward,
 * roll clockwise), and the logarithm of its focal length in widths of the picture.
 */
export type Stance = readonly [
  x: number,
  y: number,
  z: number,
  yaw: number,
  pitch: number,
  roll: number,
  zoom: number,
];

/** A point of the picture from its middle on, in widths of the picture, v downward. */
export interface Spot {
  readonly u: number;
  readonly v: number;
}

export interface Stretch {
  readonly from: Spot;
  readonly to: Spot;
}

type Vec = readonly [number, number, number];

export interface Pinhole {
  readonly position: Vec;
  readonly right: Vec;
  readonly down: Vec;
  readonly forward: Vec;
  readonly focal: number;
}

/** `hand`: 1 where x, y and z are thumb, first and second finger of the right hand, else -1. */
export function pinhole([x, y, z, yaw, pitch, roll, zoom]: Stance, hand: 1 | -1): Pinhole {
  const forward = [
    Math.cos(pitch) * Math.cos(yaw),
    Math.cos(pitch) * Math.sin(yaw),
    Math.sin(pitch),
  ] as const;
  const level = [hand * Math.sin(yaw), -hand * Math.cos(yaw), 0] as const;
  const upward = scaled(cross(level, forward), hand);
  const [c, s] = [Math.cos(roll), Math.sin(roll)];
  return {
    position: [x, y, z],
    right: sum(scaled(level, c), scaled(upward, -s)),
    down: sum(scaled(upward, -c), scaled(level, -s)),
    forward,
    focal: Math.exp(zoom),
  };
}

/** Nearer than this nothing is seen. */
const NEAR_M = 0.1;

/** How a straight member is seen, also beyond the edges of the picture; null behind the camera. */
export function seenThrough(camera: Pinhole, from: Point, to: Point): Stretch | null {
  const [a, b] = [before(camera, from), before(camera, to)];
  if (a[2] < NEAR_M && b[2] < NEAR_M) return null;
  return { from: spotOf(camera, cutTo(a, b)), to: spotOf(camera, cutTo(b, a)) };
}

/** To the right, downward and forward of the camera. */
function before({ position, right, down, forward }: Pinhole, { x, y, z }: Point): Vec {
  const from = [x / 1000 - position[0], y / 1000 - position[1], z / 1000 - position[2]] as const;
  return [dot(from, right), dot(from, down), dot(from, forward)];
}

/** The first of two points, or where the stretch between them comes before the camera. */
function cutTo(a: Vec, b: Vec): Vec {
  if (a[2] >= NEAR_M) return a;
  return sum(a, scaled(sum(b, scaled(a, -1)), (NEAR_M - a[2]) / (b[2] - a[2])));
}

const spotOf = ({ focal }: Pinhole, [across, downward, deep]: Vec): Spot => ({
  u: (focal * across) / deep,
  v: (focal * downward) / deep,
});

const dot = (a: Vec, b: Vec) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const sum = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const scaled = (a: Vec, by: number): Vec => [a[0] * by, a[1] * by, a[2] * by];
const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
