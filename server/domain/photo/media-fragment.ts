import type { UnitBox } from './region.ts';

const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const XYWH = new RegExp(`^(?:(pixel|percent):)?${NUMBER},${NUMBER},${NUMBER},${NUMBER}$`);

/**
 * The spatial dimension of W3C Media Fragments URI 1.0 §4.2.2, `[pixel:|percent:]x,y,w,h`, as a unit
 * box; decimals are accepted. Null where it is malformed, empty or begins outside the image. A pixel
 * box that reaches past the edge is cut, a percent box past 100 is refused.
 */
export function parseMediaFragment(text: string, image: { width: number; height: number }): UnitBox | null {
  const match = XYWH.exec(text);
  if (!match) return null;
  const [x, y, w, h] = match.slice(2, 6).map(Number) as [number, number, number, number];
  return match[1] === 'percent' ? fromPercent(x, y, w, h) : fromPixels(x, y, w, h, image);
}

function fromPercent(x: number, y: number, w: number, h: number): UnitBox | null {
  // Three decimals of percent may add up to a hair more than the edge.
  if (w <= 0 || h <= 0 || x + w > 100.01 || y + h > 100.01) return null;
  return clip(x / 100, y / 100, w / 100, h / 100);
}

function fromPixels(x: number, y: number, w: number, h: number, image: { width: number; height: number }) {
  return clip(x / image.width, y / image.height, w / image.width, h / image.height);
}

function clip(x: number, y: number, w: number, h: number): UnitBox | null {
  const box = { x, y, w: Math.min(w, 1 - x), h: Math.min(h, 1 - y) };
  return box.w > 0 && box.h > 0 ? box : null;
}
