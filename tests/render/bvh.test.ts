import { expect, test } from 'vitest';
import { Bvh } from '../../server/demo/render/light/bvh.ts';
import { buildBvh, type BvhData } from '../../server/demo/render/light/bvh-build.ts';
import { Ray } from '../../server/demo/render/light/ray.ts';
import { MeshBuilder } from '../../server/demo/render/mesh/mesh-builder.ts';
import { addBox, addLeaf } from '../../server/demo/render/mesh/shapes.ts';
import { Random } from '../../server/demo/render/random.ts';
import { add, scale, sub, unit, type Vec } from '../../server/demo/render/vec.ts';
import { cross, dot } from '#domain/frame/clip';
import { any, anyBox } from './small-scenes.ts';

function heap(random: Random): BvhData {
  const mesh = new MeshBuilder();
  for (let i = 0; i < 60; i += 1)
    addBox(mesh, anyBox(random, any(random, 4000)), { material: 'wood', tone: random.next() });
  for (let i = 0; i < 400; i += 1) {
    const middle = any(random, 4000);
    const corners = Array.from({ length: 4 }, () => add(middle, any(random, 60)));
    addLeaf(mesh, corners, { material: 'leaf', tone: random.next() });
  }
  return buildBvh(mesh.finish());
}

/** Every triangle by its plane and its three sides, not as the tree does it. */
function nearestByHand({ triangles }: BvhData, from: Vec, towards: Vec): number {
  let nearest = Infinity;
  for (let o = 0; o < triangles.length; o += 9) {
    const corner = (k: number): Vec => [triangles[o + k]!, triangles[o + k + 1]!, triangles[o + k + 2]!];
    const far = solved(corner(0), corner(3), corner(6), from, towards);
    if (far !== null && far < nearest) nearest = far;
  }
  return nearest;
}

/** origin + u·one + v·other = from + t·towards by Cramer's rule. */
function solved(origin: Vec, one: Vec, other: Vec, from: Vec, towards: Vec): number | null {
  const back = scale(towards, -1);
  const right = sub(from, origin);
  const whole = determinant(one, other, back);
  const u = determinant(right, other, back) / whole;
  const v = determinant(one, right, back) / whole;
  const t = determinant(one, other, right) / whole;
  return u >= 0 && v >= 0 && u + v <= 1 && t > 0 ? t : null;
}

const determinant = (a: Vec, b: Vec, c: Vec) => dot(a, cross(b, c));

test('a ray meets what it meets when every triangle is tried', () => {
  const random = new Random(7);
  const data = heap(random);
  const bvh = new Bvh(data);
  const ray = new Ray();
  let met = 0;
  for (let i = 0; i < 400; i += 1) {
    const from = any(random, 6000);
    const towards = unit(add(any(random, 3000), [-from[0], -from[1], -from[2]]));
    ray.from(...from).towards(...towards).far = 1e6;
    const found = bvh.nearest(ray) ? ray.far : Infinity;
    const expected = nearestByHand(data, from, towards);
    if (expected < Infinity) met += 1;
    if (expected === Infinity) expect(found).toBe(Infinity);
    else expect(found).toBeCloseTo(expected, 2);
    ray.from(...from).towards(...towards).far = 1e6;
    expect(bvh.blocked(ray)).toBe(expected < Infinity);
  }
  expect(met).toBeGreaterThan(100);
});

test('what lies behind the end of a ray does not block it', () => {
  const mesh = new MeshBuilder();
  const box = {
    middle: [0, 0, 0],
    axes: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
    half: [100, 100, 100],
  } as const;
  addBox(mesh, box, { material: 'card', tone: 0.5 });
  const bvh = new Bvh(buildBvh(mesh.finish()));
  const ray = new Ray().from(-1000, 3, 7).towards(1, 0, 0);
  ray.far = 899;
  expect(bvh.blocked(ray)).toBe(false);
  ray.far = 901;
  expect(bvh.blocked(ray)).toBe(true);
});
