import sharp, { type Sharp } from 'sharp';
import { crc32, deflateSync } from 'node:zlib';
import type { MediaType } from '#domain/contract/shapes';
import type { HeicDecoder, HeicPixels } from './heic-decoder.ts';
import { LIMIT_SECONDS, MAX_PIXELS } from './limits.ts';

export type FailOn = 'none' | 'warning' | 'error';

/** One image of a file: pixels not yet decoded, turned upright when they are. First page only. */
export function openUpright(path: string, failOn: FailOn): Sharp {
  return sharp(path, { failOn, limitInputPixels: MAX_PIXELS, page: 0, pages: 1, sequentialRead: true })
    .autoOrient()
    .timeout({ seconds: LIMIT_SECONDS });
}

export function isHeic(mediaType: MediaType): boolean {
  return mediaType === 'image/heic';
}

/** The decoder has turned the pixels already, so the orientation in the file's Exif is not applied again. */
export async function openHeic(path: string, decoder: HeicDecoder): Promise<Sharp | null> {
  const pixels = await decoder.decode(path);
  return pixels && fromPixels(pixels);
}

function fromPixels({ width, height, data }: HeicPixels): Sharp {
  return sharp(data, { raw: { width, height, channels: 4 }, limitInputPixels: MAX_PIXELS }).timeout({
    seconds: LIMIT_SECONDS,
  });
}

/** The colour profile of a HEIC file (phones write Display P3), or null. */
export async function colourProfile(path: string): Promise<Uint8Array | null> {
  try {
    return (await sharp(path, { limitInputPixels: false }).metadata()).icc ?? null;
  } catch {
    return null;
  }
}

/**
 * Raw pixels carry no profile and would be taken for sRGB, so they pass through a PNG that does.
 * Chunk layout: PNG specification, iCCP (name, NUL, method 0, deflated profile) directly after IHDR.
 */
export async function withProfile(pixels: Sharp, profile: Uint8Array | null): Promise<Sharp> {
  if (!profile) return pixels;
  const png = await pixels.png({ compressionLevel: 0 }).toBuffer();
  const content = Buffer.concat([Buffer.from('iCCPicc\0\0', 'latin1'), deflateSync(profile)]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(content.length - 4);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(content));
  const afterHeader = 8 + 25;
  const joined = [png.subarray(0, afterHeader), length, content, check, png.subarray(afterHeader)];
  return sharp(Buffer.concat(joined)).timeout({ seconds: LIMIT_SECONDS });
}
