import sharp, { type Metadata, type Sharp } from 'sharp';
import type { MediaType } from '#domain/contract/shapes';
import { isContainerWhole } from './container-whole.ts';
import type { HeicDecoder } from './heic-decoder.ts';
import { LIMIT_SECONDS, MAX_PIXELS, strictness } from './limits.ts';
import type { FailOn } from './open-pixels.ts';

const STRIP_ROWS = 16;
/** Above this an interlaced picture is not tried: it can only be decoded as a whole, which costs too much here. */
const INTERLACED_MAX_PIXELS = 4_000_000;
const STRIPED: readonly MediaType[] = ['image/jpeg', 'image/png', 'image/tiff'];

/**
 * Whether any picture can be got out of a file; one that decodes only in part passes. The first rows of a
 * 12-megapixel JPEG cost 3 % of making its derivatives, a whole decode at 1/8 size 35 %: so only a file whose
 * first rows are in trouble is decoded further.
 */
export async function isDecodable(
  path: string,
  mediaType: MediaType,
  metadata: Metadata,
  heic: HeicDecoder,
): Promise<boolean> {
  if (!STRIPED.includes(mediaType)) {
    if (await isContainerWhole(path, mediaType)) return true;
    if (mediaType === 'image/heic') return (await heic.decode(path)) !== null;
    return works(greys(small(path)));
  }
  if (metadata.isProgressive && metadata.width * metadata.height > INTERLACED_MAX_PIXELS) return true;
  if (await works(greys(strip(path, metadata, strictness(mediaType))))) return true;
  const first = await shareOfPicture(strip(path, metadata, 'none'));
  return first >= 0.1 || (await shareOfPicture(small(path))) >= 0.05;
}

function open(path: string, failOn: FailOn): Sharp {
  return sharp(path, {
    failOn,
    limitInputPixels: MAX_PIXELS,
    page: 0,
    pages: 1,
    sequentialRead: true,
  }).timeout({
    seconds: LIMIT_SECONDS,
  });
}

function strip(path: string, { width, height }: Metadata, failOn: FailOn): Sharp {
  return open(path, failOn).extract({ left: 0, top: 0, width, height: Math.min(STRIP_ROWS, height) });
}

function small(path: string): Sharp {
  return open(path, 'none').resize(64, 64, { fit: 'fill', kernel: 'nearest' });
}

function greys(image: Sharp): Promise<Buffer> {
  return image.flatten().greyscale().raw().toBuffer();
}

/**
 * How much is no mere filling. A JPEG decoder without data paints one grey; the block in which the data ended
 * is noise and must not pass for a picture, hence the shares asked above.
 */
async function shareOfPicture(image: Sharp): Promise<number> {
  const pixels = await greys(image).catch(() => null);
  if (!pixels) return 0;
  const counts = new Array<number>(256).fill(0);
  for (const grey of pixels) counts[grey] = (counts[grey] ?? 0) + 1;
  const filling = counts.indexOf(Math.max(...counts));
  return pixels.filter((grey) => Math.abs(grey - filling) > 2).length / pixels.length;
}

function works(decoding: Promise<unknown>): Promise<boolean> {
  return decoding.then(
    () => true,
    () => false,
  );
}
