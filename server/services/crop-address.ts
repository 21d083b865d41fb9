import { boundingBox, type Region, type UnitBox } from '#domain/photo/region';

/** With a margin of an eighth of the region around it, so that one sees where it sits. */
export function cropBox(region: Region): UnitBox {
  const { x, y, w, h } = boundingBox(region);
  const left = Math.max(0, x - w / 8);
  const top = Math.max(0, y - h / 8);
  return {
    ...{ x: left, y: top },
    w: Math.min(1, x + w * 1.125) - left,
    h: Math.min(1, y + h * 1.125) - top,
  };
}

/** The same as a media fragment. */
export function cropAround(region: Region): string {
  const { x, y, w, h } = cropBox(region);
  return `percent:${[x, y, w, h].map((part) => (part * 100).toFixed(3)).join(',')}`;
}

/** Address of the crop around a region. */
export function cropAddress({ photo, region }: { photo: string; region: Region }): string {
  return `/api/v1/photos/${photo}/crop?xywh=${cropAround(region)}`;
}
