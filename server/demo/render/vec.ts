import { dot, type Triple } from '#domain/frame/clip';

/** A point or direction in house coordinates, mm. */
export type Vec = Triple;

export const UP: Vec = [0, 0, 1];

export const add = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec, by: number): Vec => [a[0] * by, a[1] * by, a[2] * by];
/** a + b·by */
export const addScaled = (a: Vec, b: Vec, by: number): Vec => [
  a[0] + b[0] * by,
  a[1] + b[1] * by,
  a[2] + b[2] * by,
];
export const mixVec = (a: Vec, b: Vec, share: number): Vec => addScaled(a, sub(b, a), share);
export const lengthOf = (a: Vec): number => Math.sqrt(dot(a, a));

/** Of length one; what has no length points upward. */
export function unit(a: Vec): Vec {
  const length = lengthOf(a);
  return length < 1e-12 ? UP : scale(a, 1 / length);
}
