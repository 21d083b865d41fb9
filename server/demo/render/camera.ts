import type { Grid } from '#domain/frame/grid';
import { cross, dot } from '#domain/frame/clip';
import { UP, add, addScaled, scale, sub, unit, type Vec } from './vec.ts';

/** Where a picture is taken from. House coordinates: x along the first lines' positions, y along the second's, z up. */
export interface View {
  readonly position: Vec;
  readonly lookAt: Vec;
  /** How far the camera is turned clockwise, seen from behind it, in degrees. */
  readonly roll?: number;
  /** As EXIF's FocalLengthIn35mmFilm: of the lens that shows as much diagonally on 24 × 36 mm. */
  readonly focal35: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A pinhole. Pixel coordinates: (0, 0) is the outer corner of the first pixel, y downward; centres lie at halves. */
export interface Camera extends Size {
  readonly position: Vec;
  readonly right: Vec;
  readonly down: Vec;
  readonly forward: Vec;
  readonly focalPx: number;
}

/** Of 24 × 36 mm. */
const FILM_DIAGONAL_MM = Math.hypot(24, 36);

/**
 * Whether x, y and z are thumb, first and second finger of the right hand. Lines run as they lie on a drawing seen
 * from above: い from right to left and 一 from top to bottom is a right-handed house, half a turn from x rightward
 * and y upward. In a left-handed one a picture taken as if it were right-handed would be mirrored.
 */
export function isRightHanded({ first, second }: Pick<Grid, 'first' | 'second'>): boolean {
  return (first.runs === 'rightward') === (second.runs === 'upward');
}

export function cameraOf(view: View, size: Size, rightHanded: boolean): Camera {
  const hand = rightHanded ? 1 : -1;
  const forward = unit(sub(view.lookAt, view.position));
  const level = unit(scale(cross(forward, UP), hand));
  const upward = scale(cross(level, forward), hand);
  const [c, s] = [Math.cos(radians(view.roll ?? 0)), Math.sin(radians(view.roll ?? 0))];
  return {
    ...{ width: size.width, height: size.height, position: view.position, forward },
    right: addScaled(scale(level, c), upward, -s),
    down: addScaled(scale(upward, -c), level, -s),
    focalPx: (view.focal35 / FILM_DIAGONAL_MM) * Math.hypot(size.width, size.height),
  };
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;

export interface Projected {
  readonly x: number;
  readonly y: number;
  /** Distance before the camera along its direction, mm; not positive behind it. */
  readonly depth: number;
}

export function project(camera: Camera, point: Vec): Projected {
  const from = sub(point, camera.position);
  const depth = dot(from, camera.forward);
  const perDepth = camera.focalPx / depth;
  return {
    x: camera.width / 2 + dot(from, camera.right) * perDepth,
    y: camera.height / 2 + dot(from, camera.down) * perDepth,
    depth,
  };
}

/** Of length one, from the camera through a point of its picture. */
export function directionThrough(camera: Camera, x: number, y: number): Vec {
  const [across, downward] = [
    (x - camera.width / 2) / camera.focalPx,
    (y - camera.height / 2) / camera.focalPx,
  ];
  return unit(add(camera.forward, add(scale(camera.right, across), scale(camera.down, downward))));
}
