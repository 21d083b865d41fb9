import { boundingBox, outline, type Region, type UnitPoint } from '#domain/photo/region';

/** Drawings are in sheet units: the picture is 1000 wide, whatever its pixels, so that lengths are alike both ways. */
export const SHEET = 1000;

/** An SVG path of the region. `tallness`: height by width of the image. */
export function regionPath(region: Region, tallness: number): string {
  return `M${outline(region)
    .map((point) => onSheet(point, tallness).join(' '))
    .join('L')}Z`;
}

export function linePath(points: readonly UnitPoint[], tallness: number): string {
  return `M${points.map((point) => onSheet(point, tallness).join(' ')).join('L')}`;
}

export function onSheet([x, y]: UnitPoint, tallness: number): [number, number] {
  return [x * SHEET, y * SHEET * tallness];
}

/** Small regions are drawn last, so that a large one never covers them. */
export function bySize<T extends { readonly region: Region }>(things: readonly T[]): T[] {
  const size = ({ region }: T) => {
    const { w, h } = boundingBox(region);
    return w * h;
  };
  return [...things].sort((a, b) => size(b) - size(a));
}
