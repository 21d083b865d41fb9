import Flatten from '@flatten-js/core';
import { expect, it } from 'vitest';
import { cross, dot, type Convex, type Triple } from '#domain/frame/clip';
import { memberBody } from '#domain/frame/member-body';
import { convexHull, minimumWidth, type PixelPoint } from '#domain/photo/region-width';
import type { Kept } from '../../server/demo/render/truth/truth-file.ts';
import { planOf } from '../../server/demo/story/house-plan.ts';
import { PHOTOS } from '../../server/demo/story/photos.ts';
import { truthOf } from '../support/demo-truth.ts';

// The program has no camera of its own: the frame's geometry, from which it draws and finds what is hidden, is set
// beside the pictures by a pinhole written here. Areas in common by @flatten-js/core, a library of plane geometry.

const { axes } = planOf('2026-04-01');
/** What a person could still tell apart; and how far an outline of whole pixels may be off: a little over one. */
const LEAST_ACROSS_PX = 12;
const OFF_PX = 1.2;
const NEAREST_MM = 50;

/** Where three planes meet. */
function corner([a, b, c]: readonly Convex[number][]): Triple {
  if (!a || !b || !c) throw new Error('A corner takes three planes.');
  const [bc, ca, ab] = [cross(b.normal, c.normal), cross(c.normal, a.normal), cross(a.normal, b.normal)];
  const volume = dot(a.normal, bc);
  return [0, 1, 2].map(
    (i) => (a.limit * bc[i]! + b.limit * ca[i]! + c.limit * ab[i]!) / volume,
  ) as unknown as Triple;
}

/** A body of three pairs of planes has a corner for each choice of one of each pair. */
const cornersOf = (body: Convex) =>
  [0, 1].flatMap((i) => [2, 3].flatMap((j) => [4, 5].map((k) => corner([body[i]!, body[j]!, body[k]!]))));

/** On the picture, and how far before the camera (mm). */
function seenFrom({ camera, width, height }: Kept, point: Triple) {
  const from = point.map((value, i) => value - camera.position[i]!) as unknown as Triple;
  const depth = dot(from, camera.forward);
  const per = camera.focalPx / depth;
  return {
    depth,
    at: [width / 2 + per * dot(from, camera.right), height / 2 + per * dot(from, camera.down)] as const,
  };
}

/** Flatten wants one orientation for all that it joins. */
function polygon(points: readonly PixelPoint[]): Flatten.Polygon {
  const face = new Flatten.Polygon(points.map(([x, y]) => new Flatten.Point(x, y)));
  return [...face.faces][0]?.orientation() === Flatten.ORIENTATION.CCW ? face : face.reverse();
}

function inCommon(
  drawn: readonly PixelPoint[],
  worked: readonly PixelPoint[],
  { width, height }: Kept,
): number {
  const picture = polygon([
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ]);
  const [a, b] = [polygon(drawn), Flatten.BooleanOperations.intersect(polygon(worked), picture)];
  const common = Flatten.BooleanOperations.intersect(a, b).area();
  return common / (a.area() + b.area() - common);
}

/** Of members that are not too thin and lie wholly before the camera: how far both outlines agree, of 1. */
function comparedIn(truth: Kept): { mark: string; across: number; share: number }[] {
  return truth.members.flatMap(({ mark, outline }) => {
    const drawn = pairs(outline);
    const across = minimumWidth(drawn);
    const seen = cornersOf(memberBody(axes.get(mark)!)).map((point) => seenFrom(truth, point));
    // What reaches behind the camera has no outline by corners alone.
    if (across < LEAST_ACROSS_PX || seen.some(({ depth }) => depth < NEAREST_MM)) return [];
    return { mark, across, share: inCommon(drawn, convexHull(seen.map(({ at }) => at)), truth) };
  });
}

const pairs = (numbers: readonly number[]) =>
  Array.from({ length: numbers.length / 2 }, (_, i): PixelPoint => [numbers[2 * i]!, numbers[2 * i + 1]!]);

it('shows in every photo each member where the frame has it', async () => {
  let compared = 0;
  for (const { name, shot } of PHOTOS) {
    const members = comparedIn(await truthOf({ shot }));
    // What is thinner than 40 px is off by more of its width.
    const off = members.filter(({ across, share }) => share < Math.min(0.97, 1 - OFF_PX / across));
    expect({ name, off }).toEqual({ name, off: [] });
    compared += members.length;
  }
  expect(compared).toBeGreaterThan(10 * PHOTOS.length);
});
