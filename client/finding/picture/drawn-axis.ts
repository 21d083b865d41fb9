import { convexHull, type PixelPoint } from '#domain/photo/region-width';
import { outline, type Region } from '#domain/photo/region';
import type { Stretch } from './pinhole.ts';

/** What a region says of a straight member: the middle line of the narrowest strip that holds it, and half its width. */
export interface DrawnAxis extends Stretch {
  readonly half: number;
}

/** `tallness`: height by width of the picture, in whose widths all is measured. */
export function drawnAxis(region: Region, tallness: number): DrawnAxis {
  const hull = convexHull(outline(region).map(([x, y]) => [x - 0.5, (y - 0.5) * tallness]));
  const strips = hull.flatMap((from, i) => stripAlong(from, hull[(i + 1) % hull.length] ?? from, hull) ?? []);
  return strips.reduce((best, strip) => (strip.half < best.half ? strip : best), strips[0] ?? NOTHING);
}

const NOTHING: DrawnAxis = { from: { u: 0, v: 0 }, to: { u: 0, v: 0 }, half: 0 };

function stripAlong(
  [ax, ay]: PixelPoint,
  [bx, by]: PixelPoint,
  hull: readonly PixelPoint[],
): DrawnAxis | null {
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return null;
  const [du, dv] = [(bx - ax) / length, (by - ay) / length];
  const along = hull.map(([x, y]) => x * du + y * dv);
  const across = hull.map(([x, y]) => y * du - x * dv);
  const [low, high] = [Math.min(...across), Math.max(...across)];
  const middle = (low + high) / 2;
  const at = (s: number) => ({ u: s * du - middle * dv, v: s * dv + middle * du });
  return { from: at(Math.min(...along)), to: at(Math.max(...along)), half: (high - low) / 2 };
}
