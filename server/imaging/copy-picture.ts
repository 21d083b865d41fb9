import sharp, { type Exif, type Sharp } from 'sharp';
import type { MediaType } from '#domain/contract/shapes';
import type { CopyFacts } from '../services/ports.ts';
import { copyExif } from './copy-exif.ts';
import type { HeicDecoder } from './heic-decoder.ts';
import { LIMIT_SECONDS, MAX_PIXELS, withinLimit } from './limits.ts';
import { colourProfile, isHeic, openHeic, openUpright, withProfile } from './open-pixels.ts';

/** Little is lost against the original, at about its size. Common practice. */
const COPY_QUALITY = 92;

/** The whole picture, upright, in sRGB, with nothing written in it but what `facts` names. */
export async function copyPicture(
  original: string,
  mediaType: MediaType,
  facts: CopyFacts | null,
  heic: HeicDecoder,
): Promise<Uint8Array> {
  const opened = isHeic(mediaType) ? await openHeic(original, heic) : openUpright(original, 'none');
  if (!opened) throw new Error('This file cannot be decoded.');
  const pixels = await withProfile(opened, isHeic(mediaType) ? await colourProfile(original) : null);
  const picture = pixels.flatten({ background: '#ffffff' }).toColourspace('srgb');
  return withinLimit(facts ? writtenOn(picture, copyExif(facts)) : encoded(picture));
}

/** By way of bare pixels: `withExif` alone would carry the thumbnail and more of the original's Exif along. */
async function writtenOn(picture: Sharp, exif: Exif): Promise<Buffer> {
  const { data, info } = await picture.raw().toBuffer({ resolveWithObject: true });
  const { width, height, channels } = info;
  const bare = sharp(data, { raw: { width, height, channels }, limitInputPixels: MAX_PIXELS });
  return encoded(bare.timeout({ seconds: LIMIT_SECONDS }).withExif(exif));
}

function encoded(picture: Sharp): Promise<Buffer> {
  return picture.jpeg({ quality: COPY_QUALITY, chromaSubsampling: '4:4:4' }).toBuffer();
}
