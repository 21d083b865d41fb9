import {
  boundingBox,
  outline,
  regionProblem,
  type Region,
  type UnitBox,
  type UnitPoint,
} from '#domain/photo/region';

/** Geometry of drawing, in unit coordinates of the upright image. Nothing here ever leaves the image. */

export type Rectangle = Extract<Region, { shape: 'rectangle' }>;
/** Corners of the box, from the top left clockwise, then the middles of its sides, from the top clockwise. */
export type BoxHandle = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** The smallest side of a box that can still be seen and taken hold of. */
export const MIN_SIDE = 0.004;

const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

export function clampPoint([x, y]: UnitPoint): UnitPoint {
  return [clamp(x, 0, 1), clamp(y, 0, 1)];
}

/** The box between two points, cut to the image; null where it is too small to be meant. */
export function boxBetween(a: UnitPoint, b: UnitPoint): Rectangle | null {
  const [ax, ay] = clampPoint(a);
  const [bx, by] = clampPoint(b);
  const box = { x: Math.min(ax, bx), y: Math.min(ay, by), w: Math.abs(ax - bx), h: Math.abs(ay - by) };
  return box.w < MIN_SIDE || box.h < MIN_SIDE ? null : { shape: 'rectangle', ...box };
}

/** A box of the given size around a point; at an edge it is moved inwards rather than cut. */
export function boxAround([x, y]: UnitPoint, [w, h]: UnitPoint): Rectangle {
  const width = clamp(w, MIN_SIDE, 1);
  const height = clamp(h, MIN_SIDE, 1);
  return {
    shape: 'rectangle',
    x: clamp(x - width / 2, 0, 1 - width),
    y: clamp(y - height / 2, 0, 1 - height),
    w: width,
    h: height,
  };
}

export function moveRegion(region: Region, dx: number, dy: number): Region {
  if (region.shape === 'rectangle') {
    const { w, h } = region;
    return { ...region, x: clamp(region.x + dx, 0, 1 - w), y: clamp(region.y + dy, 0, 1 - h) };
  }
  const box = boundingBox(region);
  const mx = clamp(dx, -box.x, 1 - box.x - box.w);
  const my = clamp(dy, -box.y, 1 - box.y - box.h);
  return { shape: 'polygon', points: region.points.map(([x, y]) => clampPoint([x + mx, y + my])) };
}

/** Where the handles of a region sit: eight around a box, one on each corner of a polygon. */
export function handlePoints(region: Region): readonly UnitPoint[] {
  const corners = outline(region);
  if (region.shape === 'polygon') return corners;
  const middle = (i: number): UnitPoint => {
    const [a, b] = [corners[i] as UnitPoint, corners[(i + 1) % 4] as UnitPoint];
    return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  };
  return [...corners, middle(0), middle(1), middle(2), middle(3)];
}

/** Pulls one handle to a point. A box turns over when it is pulled past itself; what would not do is refused. */
export function pullHandle(region: Region, handle: number, to: UnitPoint): Region {
  if (region.shape === 'rectangle') return pullBox(region, handle as BoxHandle, clampPoint(to));
  const points = region.points.map((point, i) => (i === handle ? clampPoint(to) : point));
  const pulled: Region = { shape: 'polygon', points };
  return regionProblem(pulled) ? region : pulled;
}

/** Which sides each handle takes along: left or right, top or bottom. */
const SIDES: Readonly<Record<BoxHandle, string>> = {
  0: 'lt',
  1: 'rt',
  2: 'rb',
  3: 'lb',
  4: 't',
  5: 'r',
  6: 'b',
  7: 'l',
};

function pullBox(box: Rectangle, handle: BoxHandle, [x, y]: UnitPoint): Rectangle {
  const sides = SIDES[handle];
  const left = sides.includes('l') ? x : box.x;
  const right = sides.includes('r') ? x : box.x + box.w;
  const top = sides.includes('t') ? y : box.y;
  const bottom = sides.includes('b') ? y : box.y + box.h;
  return boxBetween([left, top], [right, bottom]) ?? box;
}

/** Grows (or shrinks) to the right and down, keeping the top left corner of the bounding box. */
export function growRegion(region: Region, dw: number, dh: number): Region {
  const box = boundingBox(region);
  const w = clamp(box.w + dw, MIN_SIDE, 1 - box.x);
  const h = clamp(box.h + dh, MIN_SIDE, 1 - box.y);
  if (region.shape === 'rectangle') return { shape: 'rectangle', x: box.x, y: box.y, w, h };
  const points = region.points.map((point) => stretch(point, box, w, h));
  return { shape: 'polygon', points };
}

function stretch([x, y]: UnitPoint, box: UnitBox, w: number, h: number): UnitPoint {
  return clampPoint([
    box.x + (box.w === 0 ? 0 : ((x - box.x) * w) / box.w),
    box.y + (box.h === 0 ? 0 : ((y - box.y) * h) / box.h),
  ]);
}

/** True where two points lie within `reach` of each other, as an ellipse: the image's sides differ in length. */
export function isNear(a: UnitPoint, b: UnitPoint, [rx, ry]: UnitPoint): boolean {
  return rx > 0 && ry > 0 && ((a[0] - b[0]) / rx) ** 2 + ((a[1] - b[1]) / ry) ** 2 <= 1;
}

/** The polygon of these corners without repeated ones, or null where they enclose nothing. */
export function closedPolygon(corners: readonly UnitPoint[], reach: UnitPoint): Region | null {
  const points = corners
    .map(clampPoint)
    .filter((point, i, all) => i === 0 || !isNear(point, all[i - 1] as UnitPoint, reach));
  const first = points[0];
  const last = points.at(-1);
  if (points.length > 3 && first && last && isNear(first, last, reach)) points.pop();
  const region: Region = { shape: 'polygon', points };
  return regionProblem(region) ? null : region;
}
