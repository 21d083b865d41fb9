import { boundingBox, outline, regionProblem, type Region, type UnitPoint } from '#domain/photo/region';
import { MIN_SIDE, type Rectangle } from './geometry.ts';

type Line = readonly [UnitPoint, UnitPoint];
type Pieces = readonly [Region, Region];

/** A line drawn by hand this near to upright or level (as the sine of the angle) cuts a box into boxes. */
const LEVEL = Math.sin((15 * Math.PI) / 180);

/**
 * Cuts a region in two along the line through both points; the left or upper piece comes first. Null where the
 * drawn stretch of the line does not go through the region, or does not leave exactly two pieces of it.
 */
export function splitAlong(region: Region, line: Line): Pieces | null {
  const [[ax, ay], [bx, by]] = line;
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0 || !goesThrough(line, outline(region))) return null;
  if (region.shape === 'rectangle') {
    if (Math.abs(bx - ax) <= LEVEL * length) return columns(region, (ax + bx) / 2);
    if (Math.abs(by - ay) <= LEVEL * length) return rows(region, (ay + by) / 2);
  }
  return alongLine(outline(region), line);
}

/** In two across the longer side. `tallness`: height by width of the image, in which lengths are measured. */
export function halve(region: Region, tallness: number): Pieces | null {
  const { x, y, w, h } = boundingBox(region);
  const isUpright = h * tallness > w;
  const middle: Line = isUpright
    ? [
        [x, y + h / 2],
        [x + w, y + h / 2],
      ]
    : [
        [x + w / 2, y],
        [x + w / 2, y + h],
      ];
  return splitAlong(region, middle);
}

function columns(box: Rectangle, x: number): Pieces | null {
  const left = { ...box, w: x - box.x };
  const right = { ...box, x, w: box.x + box.w - x };
  return left.w < MIN_SIDE || right.w < MIN_SIDE ? null : [left, right];
}

function rows(box: Rectangle, y: number): Pieces | null {
  const upper = { ...box, h: y - box.y };
  const lower = { ...box, y, h: box.y + box.h - y };
  return upper.h < MIN_SIDE || lower.h < MIN_SIDE ? null : [upper, lower];
}

/** Twice the signed area of the triangle line, point: which side of the line the point lies on. */
function side([[ax, ay], [bx, by]]: Line, [x, y]: UnitPoint): number {
  return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
}

const edges = (points: readonly UnitPoint[]): [UnitPoint, UnitPoint][] =>
  points.map((point, i) => [point, points[(i + 1) % points.length] ?? point]);

/** Whether the stretch crosses an edge, or lies within. */
function goesThrough(line: Line, points: readonly UnitPoint[]): boolean {
  return edges(points).some((edge) => meet(line, edge)) || isInside(line[0], points);
}

function meet(a: Line, b: Line): boolean {
  return side(a, b[0]) * side(a, b[1]) <= 0 && side(b, a[0]) * side(b, a[1]) <= 0;
}

/** Even–odd rule: a ray to the right crosses the outline an odd number of times. */
function isInside([x, y]: UnitPoint, points: readonly UnitPoint[]): boolean {
  const crossings = edges(points).filter(
    ([[ax, ay], [bx, by]]) => ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax),
  );
  return crossings.length % 2 === 1;
}

/** Sutherland and Hodgman (1974) against each side; an outline that the line cuts more than twice is left whole. */
function alongLine(points: readonly UnitPoint[], line: Line): Pieces | null {
  const crossings = edges(points).filter(([a, b]) => side(line, a) > 0 !== side(line, b) > 0);
  if (crossings.length !== 2) return null;
  const pieces = [1, -1].map((sign): Region => ({ shape: 'polygon', points: clipped(points, line, sign) }));
  const [a, b] = pieces.sort((one, other) => fromTopLeft(one) - fromTopLeft(other));
  return !a || !b || regionProblem(a) || regionProblem(b) ? null : [a, b];
}

function clipped(points: readonly UnitPoint[], line: Line, sign: number): UnitPoint[] {
  return edges(points).flatMap(([a, b]) => {
    const [sa, sb] = [side(line, a) * sign, side(line, b) * sign];
    const kept: UnitPoint[] = sa > 0 ? [a] : [];
    if (sa > 0 === sb > 0) return kept;
    const along = sa / (sa - sb);
    return [...kept, [a[0] + along * (b[0] - a[0]), a[1] + along * (b[1] - a[1])]];
  });
}

function fromTopLeft(region: Region): number {
  const { x, y, w, h } = boundingBox(region);
  return x + w / 2 + y + h / 2;
}
