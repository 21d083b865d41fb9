import { outline, type Region } from './region.ts';

/** Pixels of the upright picture. */
export type PixelPoint = readonly [x: number, y: number];

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Pixels of the picture across the region's narrow side: how a thin slanting outline is thin, whatever its box. */
export function acrossPx(region: Region, picture: Size): number {
  return minimumWidth(outline(region).map(([x, y]) => [x * picture.width, y * picture.height]));
}

/**
 * The least distance of two parallel lines that hold all points between them; 0 for points on one line. One of the
 * two lies on an edge of the hull (Houle and Toussaint 1988, Computing the width of a set), so edges are enough.
 */
export function minimumWidth(points: readonly PixelPoint[]): number {
  const hull = convexHull(points);
  if (hull.length < 3) return 0;
  let least = Infinity;
  hull.forEach((from, i) => {
    const to = hull[(i + 1) % hull.length] ?? from;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (length === 0) return;
    const far = hull.reduce((most, point) => Math.max(most, Math.abs(cross(from, to, point))), 0);
    least = Math.min(least, far / length);
  });
  return Number.isFinite(least) ? least : 0;
}

/** Counter-clockwise, without points inside an edge (Andrew's monotone chain, 1979). */
export function convexHull(points: readonly PixelPoint[]): PixelPoint[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const lower = chain(sorted);
  const upper = chain(sorted.reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function chain(sorted: readonly PixelPoint[]): PixelPoint[] {
  const line: PixelPoint[] = [];
  for (const point of sorted) {
    for (;;) {
      const [before, last] = [line.at(-2), line.at(-1)];
      if (!before || !last || cross(before, last, point) > 0) break;
      line.pop();
    }
    line.push(point);
  }
  return line;
}

function cross(a: PixelPoint, b: PixelPoint, c: PixelPoint): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}
