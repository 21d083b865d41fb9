import { outline, type Region } from '#domain/photo/region';

export interface PixelBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

const VERMILION = '#c8401f';
const PAPER = '#fbf7ee';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The region's outline over a crop `part` of an image of size `full` that is shown at size `out`: vermilion on a paper edge. */
export function outlineSvg(region: Region, full: Size, part: PixelBox, out: Size): string {
  const place = (unit: number, size: number, from: number, scale: number) =>
    ((unit * size - from) * scale).toFixed(2);
  const points = outline(region)
    .map(([x, y]) => {
      const across = place(x, full.width, part.left, out.width / part.width);
      return `${across},${place(y, full.height, part.top, out.height / part.height)}`;
    })
    .join(' ');
  const line = (colour: string, width: number) =>
    `<polygon points="${points}" fill="none" stroke="${colour}" stroke-width="${width}" stroke-linejoin="round"/>`;
  const size = `width="${out.width}" height="${out.height}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${line(PAPER, 5)}${line(VERMILION, 3)}</svg>`;
}
