import { boundingBox, outline, type Region } from '#domain/photo/region';
import { FILTER_PX, SEEN_ACROSS, type LegibilityMeasures } from '#domain/photo/legibility';
import { minimumWidth, type PixelPoint } from '#domain/photo/region-width';
import { pixelBox } from './crop-picture.ts';
import { detailWidth } from './detail-width.ts';
import { shrinkPart, type GreyPicture } from './grey-picture.ts';
import { visitInside } from './inside-outline.ts';

/** Noise of one pixel of an original, in grey values: a phone in the half-light of a frame. *Common practice.* */
const NOISE = 3;
/** Enough for a mean; a larger region is looked at in a grid of about as many. */
const MAX_SAMPLES = 30_000;
/** What the filters reach beyond the region, in px of the shrunk part. */
const MARGIN = 5;

/** Measures one region of an upright original. */
export async function measureRegion(picture: GreyPicture, region: Region): Promise<LegibilityMeasures> {
  const points: PixelPoint[] = outline(region).map(([x, y]) => [x * picture.width, y * picture.height]);
  const acrossPx = minimumWidth(points);
  const fine = await seen(picture, region, points, acrossPx, SEEN_ACROSS.fine);
  const coarse = await seen(picture, region, points, acrossPx, SEEN_ACROSS.coarse);
  return {
    acrossPx,
    fineBlur: blurOf(fine, acrossPx, SEEN_ACROSS.fine),
    coarseBlur: blurOf(coarse, acrossPx, SEEN_ACROSS.coarse),
    ...light(fine),
  };
}

interface Seen {
  readonly picture: GreyPicture;
  readonly points: readonly PixelPoint[];
  readonly stride: number;
  /** How many px of the original one of these stands for. */
  readonly shrunk: number;
}

/** The region with so many px across at most, and a margin around it. */
async function seen(
  picture: GreyPicture,
  region: Region,
  points: readonly PixelPoint[],
  acrossPx: number,
  across: number,
): Promise<Seen> {
  const shrunk = Math.max(1, acrossPx / across);
  const part = withMargin(pixelBox(boundingBox(region), picture), MARGIN * shrunk, picture);
  const size = {
    width: Math.max(1, Math.round(part.width / shrunk)),
    height: Math.max(1, Math.round(part.height / shrunk)),
  };
  const small = await shrinkPart(picture, part, size);
  const [sx, sy] = [size.width / part.width, size.height / part.height];
  const placed = points.map(([x, y]): PixelPoint => [(x - part.left) * sx, (y - part.top) * sy]);
  return { picture: small, points: placed, stride: strideFor(placed, small), shrunk };
}

function withMargin(box: ReturnType<typeof pixelBox>, margin: number, full: GreyPicture) {
  const left = Math.max(0, Math.floor(box.left - margin));
  const top = Math.max(0, Math.floor(box.top - margin));
  const right = Math.min(full.width, Math.ceil(box.left + box.width + margin));
  const bottom = Math.min(full.height, Math.ceil(box.top + box.height + margin));
  return { left, top, width: right - left, height: bottom - top };
}

function strideFor(points: readonly PixelPoint[], picture: GreyPicture): number {
  let count = 0;
  visitInside(points, picture, 1, () => (count += 1));
  return Math.max(1, Math.ceil(Math.sqrt(count / MAX_SAMPLES)));
}

/** Without what the filters add; as a share of the narrow side. */
function blurOf({ picture, points, stride, shrunk }: Seen, acrossPx: number, across: number): number {
  const width = detailWidth(picture, points, stride, NOISE / shrunk);
  const blur = Math.sqrt(Math.max(0, width * width - FILTER_PX * FILTER_PX));
  return Math.min(1, blur / Math.max(1, Math.min(acrossPx, across)));
}

function light({ picture, points, stride }: Seen) {
  const counts = new Uint32Array(256);
  let total = 0;
  visitInside(points, picture, stride, (x, y) => {
    const grey = picture.data[y * picture.width + x] as number;
    counts[grey] = (counts[grey] as number) + 1;
    total += 1;
  });
  const upTo = (grey: number) => counts.subarray(0, grey + 1).reduce((sum, count) => sum + count, 0);
  return {
    middle: counts.findIndex((_, grey) => upTo(grey) * 2 >= total),
    shadows: upTo(5) / total,
    highlights: (total - upTo(249)) / total,
  };
}
