import type { UnitPoint } from '#domain/photo/region';
import { clampPoint } from './geometry.ts';
import type { Viewer } from './viewer.ts';

/** A box in the middle of what is seen of the picture, a third of it wide, for drawing without a pointer. */
export function boxInView(viewer: Viewer | null, tallness: number): { centre: UnitPoint; size: UnitPoint } {
  if (!viewer) return { centre: [0.5, 0.5], size: [0.3, 0.3] };
  const { left, top, width, height } = viewer.surface.getBoundingClientRect();
  const [x0, y0] = clampPoint(viewer.toUnit(left, top));
  const [x1, y1] = clampPoint(viewer.toUnit(left + width, top + height));
  const side = Math.min(x1 - x0, (y1 - y0) * tallness) / 3;
  return { centre: [(x0 + x1) / 2, (y0 + y1) / 2], size: [side, side / tallness] };
}
