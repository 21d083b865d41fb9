/** Unit coordinates of the upright image: origin top left, x to the right, y down, both 0 to 1. */
export type UnitPoint = readonly [x: number, y: number];

export type Region =
  | {
      readonly shape: 'rectangle';
      readonly x: number;
      readonly y: number;
      readonly w: number;
      readonly h: number;
    }
  | { readonly shape: 'polygon'; readonly points: readonly UnitPoint[] };

export interface UnitBox {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export const POLYGON_MAX_POINTS = 200;

export type RegionProblem =
  'outside-image' | 'no-area' | 'too-few-points' | 'too-many-points' | 'not-a-number';

/** What is wrong with a region, or null. Rounding noise up to 1e-9 past the edge is not an error. */
export function regionProblem(region: Region): RegionProblem | null {
  const points = outline(region);
  if (points.some(([x, y]) => !Number.isFinite(x) || !Number.isFinite(y))) return 'not-a-number';
  if (region.shape === 'polygon' && points.length < 3) return 'too-few-points';
  if (region.shape === 'polygon' && points.length > POLYGON_MAX_POINTS) return 'too-many-points';
  if (region.shape === 'rectangle' && (region.w <= 0 || region.h <= 0)) return 'no-area';
  if (points.some(([x, y]) => x < -1e-9 || y < -1e-9 || x > 1 + 1e-9 || y > 1 + 1e-9)) return 'outside-image';
  return area(points) < 1e-9 ? 'no-area' : null;
}

export function outline(region: Region): readonly UnitPoint[] {
  if (region.shape === 'polygon') return region.points;
  const { x, y, w, h } = region;
  return [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
}

/** The smallest upright box around the region, cut to the image. */
export function boundingBox(region: Region): UnitBox {
  const xs = outline(region).map(([x]) => Math.min(1, Math.max(0, x)));
  const ys = outline(region).map(([, y]) => Math.min(1, Math.max(0, y)));
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  return { x, y, w: Math.max(...xs) - x, h: Math.max(...ys) - y };
}

/** Area in unit squares by the shoelace formula; self-crossing parts may cancel, so use the box for those. */
function area(points: readonly UnitPoint[]): number {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const box = (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
  let twice = 0;
  points.forEach(([x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length] ?? [x, y];
    twice += x * ny - nx * y;
  });
  return Math.abs(twice) / 2 > 1e-9 ? Math.abs(twice) / 2 : selfCrossing(points) ? box : 0;
}

/** True when the outline does not lie on one line: then it encloses something although its signed area is 0. */
function selfCrossing(points: readonly UnitPoint[]): boolean {
  const [a] = points;
  if (!a) return false;
  const far = points.reduce((best, p) => (distance(a, p) > distance(a, best) ? p : best), a);
  return points.some(
    (p) => Math.abs((far[0] - a[0]) * (p[1] - a[1]) - (far[1] - a[1]) * (p[0] - a[0])) > 1e-9,
  );
}

function distance(a: UnitPoint, b: UnitPoint): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
