import sharp, { type Metadata, type Sharp } from 'sharp';
import type { MediaType } from '#domain/contract/shapes';
import { isContainerWhole } from './container-whole.ts';
import type { HeicDecoder } from './heic-decoder.ts';
import { LIMIT_SECONDS, MAX_PIXELS, strictness, withinLimit } from './limits.ts';
import type { FailOn } from './open-pixels.ts';

const STRIP_ROWS = 16;
/** Above this an interlaced picture is not tried: it can only be decoded as a whole, which costs too much here. */
const INTERLACED_MAX_PIXELS = 4_000_000;
const STRIPED: readonly MediaType[] = ['image/jpeg', 'image/png', 'image/tiff'];

/**
 * Whether any picture can be got out of a file; one that decodes only in part passes. The first rows of a
 * 12-megapixel JPEG cost 2 % of making its derivatives, a whole decode at 1/8 size 30 %: so only a file whose
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
    return works(wholeShades(path));
  }
  if (metadata.isProgressive && metadata.width * metadata.height > INTERLACED_MAX_PIXELS) return true;
  if (await works(shades(strip(path, metadata, strictness(mediaType))))) return true;
  const first = await shadesOrNone(shades(strip(path, metadata, 'none')));
  return first > 1 || (await shadesOrNone(wholeShades(path))) > 1;
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

function wholeShades(path: string): Promise<number> {
  return shades(open(path, 'none').resize(64, 64, { fit: 'fill', kernel: 'nearest' }));
}

/** Different greys; a decoder that got nothing fills with a single one. */
async function shades(image: Sharp): Promise<number> {
  const grey = await withinLimit(image.flatten().greyscale().raw().toBuffer());
  return new Set(grey).size;
}

function works(decoding: Promise<number>): Promise<boolean> {
  return decoding.then(
    () => true,
    () => false,
  );
}

function shadesOrNone(decoding: Promise<number>): Promise<number> {
  return decoding.catch(() => 0);
}
