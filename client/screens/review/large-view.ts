import { boundingBox, type Region } from '#domain/photo/region';

/** A place on a picture, as shares of its width and height. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Times the width of its frame: a preview has no more to show. */
export const LARGEST = 8;

/** So large that the region takes half of the frame at most. */
export function zoomFor(region: Region): number {
  const { w, h } = boundingBox(region);
  return largerBy(1, 0.5 / Math.max(w, h));
}

export function largerBy(zoom: number, by: number): number {
  return Math.min(LARGEST, Math.max(1, zoom * by));
}

export function middleOf(region: Region): Spot {
  const { x, y, w, h } = boundingBox(region);
  return { x: x + w / 2, y: y + h / 2 };
}
