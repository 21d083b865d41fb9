import { describe, expect, test } from 'vitest';
import {
  cameraOf,
  directionThrough,
  isRightHanded,
  project,
  type Camera,
} from '../../server/demo/render/camera.ts';
import { PathTracer } from '../../server/demo/render/light/path-tracer.ts';
import { boxOfMember, type OrientedBox } from '../../server/demo/render/oriented-box.ts';
import { Random } from '../../server/demo/render/random.ts';
import { hullOf, inPicture, isIn, areaOf, type Px } from '../../server/demo/render/truth/polygon.ts';
import { silhouetteOf } from '../../server/demo/render/truth/silhouette.ts';
import { addScaled, scale, unit, type Vec } from '../../server/demo/render/vec.ts';
import { boathouse } from '#domain/frame/invented/boathouse/boathouse';
import { cross, isInside } from '#domain/frame/clip';
import { memberBody } from '#domain/frame/member-body';
import type { Mm } from '#domain/frame/length';
import { stateOf } from '../../server/demo/render/scene/house-state.ts';
import { any, anyBox, sceneOfBoxes } from './small-scenes.ts';

const SIZE = { width: 160, height: 120 };
const SETTINGS = { samples: 1, seed: 1, bounces: 0 };

function anyCamera(random: Random): Camera {
  const position = scale(unit(any(random, 1)), random.between(2500, 9000));
  return cameraOf(
    { position, lookAt: any(random, 400), roll: random.about(8), focal35: random.between(24, 50) },
    SIZE,
    random.chance(0.5),
  );
}

/** The middles of the pixels of which something is so. */
function pixelsWhere(is: (x: number, y: number) => boolean): Px[] {
  return Array.from({ length: SIZE.width * SIZE.height }, (_, i): Px => {
    return [(i % SIZE.width) + 0.5, Math.floor(i / SIZE.width) + 0.5];
  }).filter(([x, y]) => is(x, y));
}

/** How far a point lies outside a convex outline, negative within; px. */
function outside(outline: readonly Px[], [x, y]: Px): number {
  return Math.max(
    ...outline.map(([ax, ay], i) => {
      const [bx, by] = outline[(i + 1) % outline.length]!;
      const size = Math.hypot(bx - ax, by - ay) || 1;
      // The hull turns so that its inside is at the positive side.
      return -((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / size;
    }),
  );
}

describe('the outline of a box alone', () => {
  test('is where rays begin to meet it, from without and from within', () => {
    const random = new Random(11);
    for (let i = 0; i < 20; i += 1) {
      const box = anyBox(random);
      const camera = anyCamera(random);
      const tracer = new PathTracer(sceneOfBoxes([box]), camera, SETTINGS);
      const outline = silhouetteOf(box, camera);
      const wrong = pixelsWhere((x, y) => {
        const far = outside(outline, [x, y]);
        return Math.abs(far) > 0.02 && (tracer.memberAt(x, y) === 0) !== far < 0;
      });
      expect(wrong, `round ${i}`).toEqual([]);
    }
  });

  test('reaches within 0.6 px of its outermost pixels on every side, and no pixel reaches beyond it', () => {
    const random = new Random(12);
    for (let i = 0; i < 25; i += 1) {
      const box = anyBox(random);
      const camera = anyCamera(random);
      const tracer = new PathTracer(sceneOfBoxes([box]), camera, SETTINGS);
      const pixels = pixelsWhere((x, y) => tracer.memberAt(x, y) === 0);
      const outline = silhouetteOf(box, camera);
      expect(pixels.filter((pixel) => outside(outline, pixel) > 0.02)).toEqual([]);
      // Of a convex outline, that of the pixels' squares must lie about it.
      const squares = hullOf(pixels.flatMap(([x, y]) => AROUND.map(([a, b]): Px => [x + a, y + b])));
      for (const [x, y] of inPicture(outline, SIZE.width, SIZE.height))
        if (sharpness(outline, [x, y]) > 60) expect(outside(squares, [x, y])).toBeLessThan(0.6);
    }
  });
});

const AROUND = [
  [-0.5, -0.5],
  [0.5, -0.5],
  [0.5, 0.5],
  [-0.5, 0.5],
] as const;

/** The angle at the corner of an outline, degrees: a needle's point is narrower than a pixel. */
function sharpness(outline: readonly Px[], corner: Px): number {
  const at = outline.findIndex(([x, y]) => Math.hypot(x - corner[0], y - corner[1]) < 1e-6);
  if (at < 0) return 0;
  const [before, after] = [outline.at(at - 1)!, outline[(at + 1) % outline.length]!];
  const [a, b] = [before, after].map(([x, y]) => Math.atan2(y - corner[1], x - corner[0])) as [
    number,
    number,
  ];
  const turn = Math.abs(a - b) % (2 * Math.PI);
  return (Math.min(turn, 2 * Math.PI - turn) * 180) / Math.PI;
}

test('among others, what is seen of a member agrees with the hulls of all, nearest first', () => {
  const random = new Random(21);
  let members = 0;
  for (let round = 0; round < 6; round += 1) {
    // Side by side at one distance, so that each is whole.
    const boxes = Array.from({ length: 5 }, (_, i) => upright([(i - 2) * 700, random.about(100), 0], random));
    const camera = cameraOf(
      { position: [random.about(800), -6000, random.about(800)], lookAt: [0, 0, 0], roll: 3, focal35: 26 },
      SIZE,
      true,
    );
    const tracer = new PathTracer(sceneOfBoxes(boxes), camera, SETTINGS);
    const outlines = boxes.map((box) => silhouetteOf(box, camera));
    for (const [member, outline] of outlines.entries()) {
      if (areaOf(outline) < 40) continue;
      members += 1;
      const seen = (x: number, y: number) => tracer.memberAt(x, y) === member;
      const inside = (x: number, y: number) => isIn(outline, [x, y]);
      const both = pixelsWhere((x, y) => seen(x, y) && inside(x, y)).length;
      const either = pixelsWhere((x, y) => seen(x, y) || inside(x, y)).length;
      expect(both / either).toBeGreaterThanOrEqual(0.97);
    }
  }
  expect(members).toBeGreaterThan(20);
});

test('of two pieces let into each other flush, the first of the house is seen, without speckles', () => {
  const post = upright([0, 0, 0], new Random(1));
  const tie: OrientedBox = {
    ...post,
    axes: [post.axes[1], post.axes[2], post.axes[0]],
    half: [1500, 60, 60],
  };
  for (const roll of [0, 4, 9]) {
    const camera = cameraOf(
      { position: [-700, -3500, 400], lookAt: [0, 0, 0], roll, focal35: 90 },
      SIZE,
      true,
    );
    const outline = silhouetteOf(post, camera);
    for (const order of [0, 1]) {
      const tracer = new PathTracer(sceneOfBoxes(order === 0 ? [post, tie] : [tie, post]), camera, SETTINGS);
      const front = project(camera, [0, -60, 0]);
      const patch = pixelsWhere(
        (x, y) => Math.hypot(x - front.x, y - front.y) < 5.5 && isIn(outline, [x, y]),
      );
      expect(patch.length).toBeGreaterThan(60);
      expect(patch.map(([x, y]) => tracer.memberAt(x, y))).toEqual(patch.map(() => 0));
    }
  }
});

const upright = (middle: Vec, random: Random): OrientedBox => ({
  middle,
  axes: [
    [0, 0, 1],
    [1, 0, 0],
    [0, 1, 0],
  ],
  half: [random.between(500, 1400), 60, 60],
});

describe('not mirrored', () => {
  const standing = (x: number, y: number): OrientedBox => upright([x, y, 0], new Random(1));

  test('from the south, east (x) lies to the right of a right-handed house', () => {
    const camera = cameraOf({ position: [0, -5000, 0], lookAt: [0, 0, 0], focal35: 26 }, SIZE, true);
    const tracer = new PathTracer(sceneOfBoxes([standing(-900, 0), standing(900, 0)]), camera, SETTINGS);
    const row = Array.from({ length: SIZE.width }, (_, x) => tracer.memberAt(x + 0.5, 60.5));
    expect(row.lastIndexOf(0)).toBeLessThan(row.indexOf(1));
    expect(project(camera, [0, 0, 500]).y).toBeLessThan(60);
    expect(project(camera, [900, 0, 0]).x).toBeGreaterThan(80);
  });

  test('of a left-handed house it lies to the left', () => {
    const camera = cameraOf({ position: [0, -5000, 0], lookAt: [0, 0, 0], focal35: 26 }, SIZE, false);
    expect(project(camera, [900, 0, 0]).x).toBeLessThan(80);
    expect(project(camera, [0, 0, 500]).y).toBeLessThan(60);
  });

  // い runs leftward and 一 downward (common practice): いの一 in the upper right. Whoever stands at the lower side of
  // such a drawing and looks up it has い at the right hand and 一 in front.
  test('the house as it is drawn is the house as it stands', () => {
    const { grid } = boathouse('2026-04-01');
    expect(isRightHanded(grid)).toBe(true);
    const [near, far] = [grid.second.lines.at(-1)!.at, grid.second.lines[0]!.at];
    const middle = grid.first.lines.at(-1)!.at / 2;
    const camera = cameraOf(
      { position: [middle, near + 9000, 1600], lookAt: [middle, far, 1600], focal35: 26 },
      SIZE,
      isRightHanded(grid),
    );
    const at = (label: string) => grid.first.lines.find((line) => line.label === label)!.at;
    expect(project(camera, [at('い'), near, 0]).x).toBeGreaterThan(project(camera, [at('ほ'), near, 0]).x);
  });

  test.each([
    ['rightward', 'upward', true],
    ['leftward', 'downward', true],
    ['rightward', 'downward', false],
    ['leftward', 'upward', false],
  ] as const)('lines %s and %s: right-handed %s', (first, second, expected) => {
    const family = { lines: [{ label: 'a', at: 0 as Mm }] };
    expect(isRightHanded({ first: { ...family, runs: first }, second: { ...family, runs: second } })).toBe(
      expected,
    );
  });

  test('turned clockwise, the camera sees what is level fall to the left', () => {
    const camera = cameraOf(
      { position: [0, -5000, 0], lookAt: [0, 0, 0], focal35: 26, roll: 10 },
      SIZE,
      true,
    );
    expect(project(camera, [900, 0, 0]).y).toBeLessThan(project(camera, [-900, 0, 0]).y);
  });
});

describe('the camera', () => {
  test('sends a ray through a pixel to the points that it projects there', () => {
    const random = new Random(3);
    for (let i = 0; i < 50; i += 1) {
      const camera = anyCamera(random);
      const [x, y] = [random.between(0, 160), random.between(0, 120)];
      const point = addScaled(camera.position, directionThrough(camera, x, y), random.between(100, 9000));
      const seen = project(camera, point);
      expect(seen.x).toBeCloseTo(x, 6);
      expect(seen.y).toBeCloseTo(y, 6);
    }
  });

  test('has sides of length one, square to each other', () => {
    const { right, down, forward } = anyCamera(new Random(4));
    expect(cross(right, down).map((v, i) => Math.abs(v) - Math.abs(forward[i]!))).toEqual([
      expect.closeTo(0),
      expect.closeTo(0),
      expect.closeTo(0),
    ]);
  });

  // 26 mm on 24 × 36 mm sees 2·atan(43.27 / 52) = 79.5° diagonally (CIPA DC-008 defines the tag by equal diagonals).
  test('sees as much diagonally as its focal length for 35 mm film says', () => {
    const camera = cameraOf(
      { position: [0, 0, 0], lookAt: [0, 1, 0], focal35: 26 },
      { width: 4000, height: 3000 },
      true,
    );
    const [a, b] = [directionThrough(camera, 0, 0), directionThrough(camera, 4000, 3000)];
    const angle = (Math.acos(a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) * 180) / Math.PI;
    expect(angle).toBeCloseTo(79.5, 1);
  });
});

test('the box of a member is its body in the frame', () => {
  const random = new Random(9);
  const { members } = stateOf(boathouse('2026-04-01'), { stageOf: () => 'raised' });
  for (const { axis } of members) {
    const box = boxOfMember(axis);
    const body = memberBody(axis);
    for (let i = 0; i < 6; i += 1) {
      const local = box.half.map((half) => random.about(half * 1.5)) as unknown as Vec;
      const [x, y, z] = box.axes.reduce<Vec>((sum, a, k) => addScaled(sum, a, local[k]!), box.middle);
      const within = local.every((value, k) => Math.abs(value) < box.half[k]!);
      expect(isInside({ x: x as Mm, y: y as Mm, z: z as Mm }, body)).toBe(within);
    }
  }
});
