import { boundingBox, type Region, type UnitBox } from './region.ts';

/** A picture more slender than this is a strip on which nobody recognises anything. */
const MOST_SLENDER = 3;

export interface Crop {
  readonly box: UnitBox;
  /** The region, where so much beside it is in the crop that it is to be outlined. */
  readonly outline: Region | undefined;
}

/**
 * What is cut out around a region of a photo of `width` by `height` pixels: a margin of an eighth of the region on
 * each side, so that one sees where it sits, and with a long rail or post as much beside it as makes it readable.
 */
export function cropOf(region: Region, { width, height }: { width: number; height: number }): Crop {
  const { x, y, w, h } = boundingBox(region);
  const across = Math.min(1, w * 1.25) * width;
  const down = Math.min(1, h * 1.25) * height;
  const least = Math.max(across, down) / MOST_SLENDER;
  const [left, right] = about(x + w / 2, Math.max(across, least) / width);
  const [top, bottom] = about(y + h / 2, Math.max(down, least) / height);
  return {
    box: { x: left, y: top, w: right - left, h: bottom - top },
    outline: Math.min(across, down) < least ? region : undefined,
  };
}

/** A span about its middle, moved into the photo: what lies at an edge has more on its other side. */
function about(middle: number, length: number): [number, number] {
  const from = Math.max(0, Math.min(middle - length / 2, 1 - length));
  return [from, Math.min(1, from + length)];
}
