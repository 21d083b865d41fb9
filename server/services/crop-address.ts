import { boundingBox, type Region } from '#domain/photo/region';

/** Address of the crop around a region. */
export function cropAddress({ photo, region }: { photo: string; region: Region }): string {
  return `/api/v1/photos/${photo}/crop?xywh=${cropAround(region)}`;
}

/** A media fragment with a margin of an eighth of the region around it, so that one sees where it sits. */
export function cropAround(region: Region): string {
  const { x, y, w, h } = boundingBox(region);
  const left = Math.max(0, x - w / 8);
  const top = Math.max(0, y - h / 8);
  const box = [left, top, Math.min(1, x + w * 1.125) - left, Math.min(1, y + h * 1.125) - top];
  return `percent:${box.map((part) => (part * 100).toFixed(3)).join(',')}`;
}
