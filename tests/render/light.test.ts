import { describe, expect, test } from 'vitest';
import { cameraOf } from '../../server/demo/render/camera.ts';
import type { Film } from '../../server/demo/render/light/film.ts';
import { LightPaths, schlick } from '../../server/demo/render/light/light-paths.ts';
import { render } from '../../server/demo/render/light/render.ts';
import { Samples, tent } from '../../server/demo/render/light/samples.ts';
import type { MeshBuilder } from '../../server/demo/render/mesh/mesh-builder.ts';
import { addBlob, addBox, block } from '../../server/demo/render/mesh/shapes.ts';
import { Random, pairSeed } from '../../server/demo/render/random.ts';
import { EVEN, sceneOf } from './small-scenes.ts';

const CAMERA = cameraOf(
  { position: [0, -4000, 300], lookAt: [0, 0, 0], focal35: 28 },
  { width: 24, height: 18 },
  true,
);

/** Radiance of the pixels that show no sky. */
function seenOf(film: Film): number[] {
  return Array.from(film.light)
    .map((light, i) => light * film.colour[i]! + film.shine[i]!)
    .filter((_, i) => film.guide[4 * Math.floor(i / 3) + 3]! < 100);
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

const ball = (tone: number) => (mesh: MeshBuilder) =>
  addBlob(
    mesh,
    { middle: [0, 0, 0], radii: [900, 900, 900], segments: 24, reach: () => 1 },
    { material: 'card', tone },
  );

// The furnace test, the usual check of a renderer's balance of energy: under an even sky of radiance 1 a convex
// body shows its albedo everywhere, whatever its shape.
describe('in a furnace', () => {
  test.each([0.18, 0.5, 0.9])('a ball of albedo %d shows it', async (albedo) => {
    const film = await render(sceneOf(ball(albedo), EVEN), CAMERA, { samples: 32, seed: 3, bounces: 8 });
    const seen = seenOf(film);
    expect(seen.length).toBeGreaterThan(100);
    expect(mean(seen)).toBeCloseTo(albedo, 2);
    expect(Math.max(...seen.map((value) => Math.abs(value - albedo)))).toBeLessThan(0.06);
  });

  test('white things vanish, since all light comes back in the end', async () => {
    const heap = (mesh: MeshBuilder) => {
      for (const [x, y, z] of [
        [0, 0, -900],
        [-500, -300, -400],
        [500, 100, -300],
      ] as const)
        addBox(mesh, block([x, y, z], [900, 900, 500], x), { material: 'card', tone: 1 });
    };
    const film = await render(sceneOf(heap, EVEN), CAMERA, { samples: 32, seed: 3, bounces: 60 });
    const seen = seenOf(film);
    expect(seen.length).toBeGreaterThan(60);
    for (const value of seen) expect(value).toBeCloseTo(1, 2);
  });

  test('without light thrown back the corner of two white things is darker', async () => {
    const corner = (mesh: MeshBuilder) => {
      addBox(mesh, block([0, 0, -600], [4000, 3000, 100]), { material: 'card', tone: 1 });
      addBox(mesh, block([0, 300, -500], [4000, 100, 2000]), { material: 'card', tone: 1 });
    };
    const dark = await render(sceneOf(corner, EVEN), CAMERA, { samples: 16, seed: 3, bounces: 0 });
    expect(mean(seenOf(dark))).toBeLessThan(0.9);
  });
});

test('a level card in the sun gets its power times the cosine', () => {
  const scene = sceneOf(
    (mesh) => addBox(mesh, block([0, 0, -100], [2000, 2000, 100]), { material: 'card', tone: 0.5 }),
    { kind: 'day', sun: [0, -0.6, 0.8], clouds: 1 },
  );
  const paths = new LightPaths(scene, [0, 0, 5000], 0);
  const gathered = (sample: number) => {
    paths.samples.begin(sample, 1);
    paths.samples.next(sample);
    paths.ray.from(1, 2, 5000).towards(0, 0, -1).far = 1e5;
    expect(paths.bvh.nearest(paths.ray)).toBe(true);
    paths.place.find(paths.ray, 0);
    paths.gather(0);
    return paths.found[0];
  };
  const light = mean(Array.from({ length: 4000 }, (_, i) => gathered(i)));
  // The sky alone gives between its zenith's and its horizon's radiance.
  expect(light - 5.5 * 0.8).toBeGreaterThan(0.2);
  expect(light - 5.5 * 0.8).toBeLessThan(1.5);
});

test('rays leave a place the likelier the squarer: the mean cosine is two thirds', () => {
  const scene = sceneOf(ball(0.5), EVEN);
  const paths = new LightPaths(scene, [0, 0, 5000], 0);
  const cosines = Array.from({ length: 6000 }, (_, i) => {
    paths.samples.begin(i, 1);
    paths.samples.next(0);
    paths.ray.from(100, -200, 5000).towards(0, 0, -1).far = 1e5;
    paths.bvh.nearest(paths.ray);
    paths.place.find(paths.ray, 0);
    const { nx, ny, nz } = paths.place;
    paths.gather(0);
    return nx * paths.ray.dx + ny * paths.ray.dy + nz * paths.ray.dz;
  });
  expect(Math.abs(mean(cosines) - 2 / 3)).toBeLessThan(0.01);
});

test('chances lie evenly between 0 and 1, and those of neighbours have nothing in common', () => {
  const random = new Random(5);
  const bins = new Array<number>(16).fill(0);
  for (let i = 0; i < 32_000; i += 1) bins[Math.floor(random.next() * 16)]! += 1;
  // Chi squared of 15 degrees of freedom exceeds 37.7 once in a thousand times (tables).
  expect(bins.reduce((sum, n) => sum + (n - 2000) ** 2 / 2000, 0)).toBeLessThan(37.7);
  const first = Array.from({ length: 4000 }, (_, i) => new Random(pairSeed(i, 1)).next());
  const products = first.slice(1).map((value, i) => (value - 0.5) * (first[i]! - 0.5));
  expect(Math.abs(mean(products)) * 12).toBeLessThan(0.06);
});

test('the chances of a pixel fill each dimension more evenly than plain ones', () => {
  const samples = new Samples();
  samples.begin(17, 4);
  for (const dimension of [0, 1, 2, 3, 4, 5]) {
    const bins = new Set<number>();
    for (let i = 0; i < 32; i += 1) {
      samples.next(i);
      bins.add(Math.floor(samples.even(dimension) * 16));
    }
    expect(bins.size).toBeGreaterThanOrEqual(15);
  }
});

test('a tent is highest in the middle and ends at one', () => {
  expect([0, 0.125, 0.5, 1].map(tent)).toEqual([-1, -0.5, 0, 1]);
});

// Of water (refractive index 1.33) seen from straight above 2 %, of glass 4 %; along it everything. Fresnel.
test('water mirrors little from above and all along it', () => {
  expect(schlick(1)).toBeGreaterThanOrEqual(0.02);
  expect(schlick(1)).toBeLessThanOrEqual(0.04);
  expect(schlick(0)).toBe(1);
});
