import { dot } from '#domain/frame/clip';
import { project, type Camera } from '../camera.ts';
import { cornersOf, type OrientedBox } from '../oriented-box.ts';
import { mixVec, sub, type Vec } from '../vec.ts';
import { hullOf, type Px } from './polygon.ts';

/** What is nearer to the camera is cut away, lest it be projected from behind. */
const NEAREST_MM = 50;
/** Corners of a box whose numbers differ in one bit share an edge. */
const EDGES = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((a) =>
  [1, 2, 4].filter((bit) => (a & bit) === 0).map((bit) => [a, a | bit] as const),
);

/** The outline of a whole box, also beyond the picture; empty where it lies behind the camera. */
export function silhouetteOf(box: OrientedBox, camera: Camera): Px[] {
  const corners = cornersOf(box);
  const before = (point: Vec) => dot(sub(point, camera.position), camera.forward) - NEAREST_MM;
  const cuts = EDGES.flatMap(([a, b]) => {
    const [from, to] = [before(corners[a]!), before(corners[b]!)];
    return from < 0 === to < 0 ? [] : [mixVec(corners[a]!, corners[b]!, from / (from - to))];
  });
  const seen = [...corners.filter((corner) => before(corner) >= 0), ...cuts];
  return hullOf(
    seen.map((point) => {
      const { x, y } = project(camera, point);
      return [x, y] as const;
    }),
  );
}
