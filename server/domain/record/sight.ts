import { boxOf } from '../frame/box-of.ts';
import { clipLine, directionOf, dot, isInside, type Convex, type Triple } from '../frame/clip.ts';
import { pointOn } from '../frame/axis-of.ts';
import { memberBody } from '../frame/member-body.ts';
import { planIndex } from '../frame/plan-index.ts';
import type { Axis, Point } from '../frame/set-out.ts';
import type { Stretch } from './stretches.ts';

/** Nearer nothing is in the picture as a whole, farther no peg can be made out. Common practice. */
export const NEAREST_MM = 800;
export const FARTHEST_MM = 6000;
/** Flatter than 30° to its axis a member is seen from its end. */
const LEAST_SINE = 0.5;
/** Posts and beams stand in the way; rails, studs and lath are looked past. Common practice. */
export const THICK_MM = 90;
/** Points on a stretch are no farther apart, so that no post slips in between, and never fewer than three. */
const POINTS_APART_MM = 150;
/** Less of a body than this on the way is its edge. */
const GRAZE_MM = 2;
/** What a body takes to the sides, and where over the floor it is in the way of somebody. */
const ELBOW_MM = 200;
const [KNEE_BELOW_EYE_MM, HEAD_OVER_EYE_MM] = [1100, 200];

export interface FrameMember {
  readonly mark: string;
  readonly axis: Axis;
}

/** Points on a member that are to be seen together, with the direction of its axis. */
export interface Target {
  readonly mark: string;
  readonly direction: Triple;
  readonly middle: Triple;
  /** Of the points from the middle, along the axis in mm. */
  readonly offsets: readonly number[];
  readonly points: readonly Triple[];
}

export interface Sight {
  /** 'blocked': near enough and not along its axis, but something stands in the way of a point. */
  look(eye: Point, target: Target): 'seen' | 'blocked' | 'out-of-reach';
  /** Whether a person can stand there: no member and nothing closed from knee to head. */
  hasRoom(eye: Point): boolean;
}

export const tripleOf = ({ x, y, z }: Point): Triple => [x, y, z];

/** Points spread over a stretch (mm from the start), none at its ends, where joints hide it. */
export function targetOf({ mark, axis }: FrameMember, { from, to }: Stretch): Target {
  const count = Math.max(3, Math.ceil((to - from) / POINTS_APART_MM));
  const middle = (from + to) / 2;
  const offsets = Array.from({ length: count }, (_, i) => ((i + 0.5) / count - 0.5) * (to - from));
  const at = (along: number) => tripleOf(pointOn(axis, along));
  return {
    mark,
    direction: directionOf(axis),
    middle: at(middle),
    offsets,
    points: offsets.map((offset) => at(middle + offset)),
  };
}

/** Lines of sight through closed coverings (bounded, house coordinates in mm) and the frame's own members. */
export function sightThrough(opaque: readonly Convex[], members: readonly FrameMember[]): Sight {
  const bodies = [
    ...opaque.map((body) => ({ body, mark: null, blocks: true })),
    ...members.map(({ mark, axis }) => ({
      body: memberBody(axis),
      mark,
      blocks: Math.min(axis.width, axis.depth) >= THICK_MM,
    })),
  ];
  const blocking = bodies.filter(({ blocks }) => blocks);
  const inTheWay = planIndex(blocking.map(({ body }) => boxOf(body)));
  const around = planIndex(bodies.map(({ body }) => boxOf(body)));

  /** What stands before one target often stands before the next one, too. */
  let last: Obstacle | null = null;

  /** Whether anything that reaches into the triangle from the eye to the ends of the target hides a point of it. */
  const isHidden = (eye: Triple, { mark, middle, points, offsets }: Target) => {
    const lines = points.map((point) => lineTo(eye, point));
    const corners = [eye, points[0] ?? eye, points.at(-1) ?? eye];
    const hides = (obstacle: Obstacle) =>
      obstacle.mark !== mark &&
      !liesApart(obstacle.body, corners) &&
      lines.some((line) => blocks(obstacle, line));
    if (last && hides(last)) return true;
    const found = inTheWay.find(eye, middle, Math.abs(offsets[0] ?? 0), (number) =>
      hides(blocking[number] as Obstacle),
    );
    if (found >= 0) last = blocking[found] as Obstacle;
    return found >= 0;
  };

  return {
    look(eye, target) {
      const from = tripleOf(eye);
      if (!isWithinReach(from, target)) return 'out-of-reach';
      return isHidden(from, target) ? 'blocked' : 'seen';
    },
    hasRoom({ x, y, z }) {
      const foot: Triple = [x, y, z - KNEE_BELOW_EYE_MM];
      const head: Triple = [x, y, z + HEAD_OVER_EYE_MM];
      const isInTheWay = (number: number) => {
        const { body } = bodies[number] as (typeof bodies)[number];
        const grown = body.map(({ normal, limit }) => ({ normal, limit: limit + ELBOW_MM }));
        return clipLine(foot, [0, 0, 1], head[2] - foot[2], grown) !== null;
      };
      return around.find(foot, head, ELBOW_MM, isInTheWay) < 0;
    },
  };
}

/** A closed covering, or a member by its mark. */
interface Obstacle {
  readonly body: Convex;
  readonly mark: string | null;
}

function blocks({ body, mark }: Obstacle, { eye, point, direction, length }: Line): boolean {
  const inside = clipLine(eye, direction, length, body);
  if (!inside || inside.to - inside.from <= GRAZE_MM) return false;
  // A member about the point itself is a joint, and heights are often assumed.
  return mark === null || !holds(body, point);
}

/** Whether one face of the body has all corners before it. */
function liesApart(body: Convex, corners: readonly Triple[]): boolean {
  return body.some(({ normal, limit }) => corners.every((corner) => dot(normal, corner) > limit));
}

const holds = (body: Convex, [x, y, z]: Triple) => isInside({ x, y, z } as Point, body);

interface Line {
  readonly eye: Triple;
  readonly point: Triple;
  readonly direction: Triple;
  readonly length: number;
}

function lineTo(eye: Triple, point: Triple): Line {
  const way: Triple = [point[0] - eye[0], point[1] - eye[1], point[2] - eye[2]];
  const length = Math.sqrt(dot(way, way));
  return { eye, point, direction: [way[0] / length, way[1] / length, way[2] / length], length };
}

/** By Pythagoras from the foot of the perpendicular from the eye, since all points lie on one line. */
function isWithinReach(eye: Triple, { direction, middle, offsets }: Target): boolean {
  const way: Triple = [middle[0] - eye[0], middle[1] - eye[1], middle[2] - eye[2]];
  const along = dot(way, direction);
  const aside = dot(way, way) - along ** 2;
  const farthest = Math.min(FARTHEST_MM ** 2, aside / LEAST_SINE ** 2);
  return offsets.every((offset) => {
    const far = aside + (along + offset) ** 2;
    return far >= NEAREST_MM ** 2 && far <= farthest;
  });
}
