import Flatten from '@flatten-js/core';
import { describe, expect, test } from 'vitest';
import { cameraOf } from '../../server/demo/render/camera.ts';
import type { OrientedBox } from '../../server/demo/render/oriented-box.ts';
import { Random } from '../../server/demo/render/random.ts';
import { areaOf, hullOf, inPicture, isIn, type Px } from '../../server/demo/render/truth/polygon.ts';
import { silhouetteOf } from '../../server/demo/render/truth/silhouette.ts';

const WIDTH = 160;
const HEIGHT = 120;

const someHull = (random: Random): Px[] =>
  hullOf(Array.from({ length: 9 }, () => [random.between(-90, 250), random.between(-70, 190)] as const));

const polygonOf = (points: readonly Px[]) =>
  new Flatten.Polygon(points.map(([x, y]) => new Flatten.Point(x, y)));

// @flatten-js/core, a library of plane geometry, is the stranger here.
describe('outlines agree with a library of plane geometry', () => {
  test('in their area, whole and cut at the edge of the picture', () => {
    const random = new Random(31);
    const picture = polygonOf([
      [0, 0],
      [WIDTH, 0],
      [WIDTH, HEIGHT],
      [0, HEIGHT],
    ]);
    for (let i = 0; i < 60; i += 1) {
      const hull = someHull(random);
      const stranger = polygonOf(hull);
      expect(areaOf(hull)).toBeCloseTo(Math.abs(stranger.area()), 6);
      const cut = inPicture(hull, WIDTH, HEIGHT);
      const common = Flatten.BooleanOperations.intersect(orient(stranger), orient(picture.clone()));
      expect(areaOf(cut)).toBeCloseTo(Math.abs(common.area()), 4);
    }
  });

  test('in which points they hold', () => {
    const random = new Random(32);
    for (let i = 0; i < 60; i += 1) {
      const hull = someHull(random);
      const [x, y] = [random.between(-90, 250), random.between(-70, 190)];
      expect(isIn(hull, [x, y])).toBe(polygonOf(hull).contains(new Flatten.Point(x, y)));
    }
  });
});

/** Both turned the same way, as the library wants it. */
function orient(polygon: Flatten.Polygon): Flatten.Polygon {
  const [face] = [...polygon.faces] as Flatten.Face[];
  if (face && face.orientation() === Flatten.ORIENTATION.CCW) polygon.reverse();
  return polygon;
}

describe('a piece that reaches past the camera', () => {
  const beam: OrientedBox = {
    middle: [0, 0, 0],
    axes: [
      [0, 1, 0],
      [1, 0, 0],
      [0, 0, 1],
    ],
    half: [5000, 60, 90],
  };
  const size = { width: WIDTH, height: HEIGHT };

  test('is cut before it, and what is left is not turned over', () => {
    const camera = cameraOf({ position: [600, 0, 300], lookAt: [0, 3000, 0], focal35: 26 }, size, true);
    const outline = inPicture(silhouetteOf(beam, camera), WIDTH, HEIGHT);
    expect(areaOf(outline)).toBeGreaterThan(100);
    // It lies below the camera and to the left of it, so it leaves the picture there.
    expect(Math.max(...outline.map(([, y]) => y))).toBeCloseTo(HEIGHT, 6);
    expect(Math.min(...outline.map(([x]) => x))).toBeCloseTo(0, 6);
  });

  test('behind it altogether it has no outline', () => {
    const camera = cameraOf({ position: [0, -6000, 0], lookAt: [0, -9000, 0], focal35: 26 }, size, true);
    expect(silhouetteOf(beam, camera)).toEqual([]);
  });
});
