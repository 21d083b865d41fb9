import { boundingBox, type Region } from '#domain/photo/region';

/** So near the edge, in widths of the picture, a hand that means the edge draws. Common practice. */
const NEAR = 0.015;

/** Whether the picture likely ends before the member does: its region reaches an edge with one of its ends. */
export function isCutOff(region: Region, tallness: number): boolean {
  const { x, y, w, h } = boundingBox(region);
  const isWide = w >= h * tallness;
  const [from, to, near] = isWide ? [x, x + w, NEAR] : [y, y + h, NEAR / tallness];
  return from < near || to > 1 - near;
}
