import sharp, { type Sharp } from 'sharp';
import type { MediaType } from '#domain/contract/shapes';
import type { MadePictures } from '../services/ports.ts';
import type { HeicDecoder } from './heic-decoder.ts';
import { JPEG_QUALITY, PREVIEW_SIDE, strictness, THUMB_SIDE, withinLimit } from './limits.ts';
import { colourProfile, isHeic, openHeic, openUpright, withProfile } from './open-pixels.ts';
import { pictureTraits } from './picture-traits.ts';
import { writeWhole } from './write-whole.ts';

/** The original is decoded once, for the preview; the thumbnail is made from that. Rejects only where the disk fails. */
export async function makePictures(
  original: string,
  mediaType: MediaType,
  to: { thumb: string; preview: string },
  heic: HeicDecoder,
): Promise<MadePictures> {
  const made = isHeic(mediaType)
    ? await fromHeic(original, heic)
    : await withinLimit(fromFile(original, mediaType)).catch(() => null);
  if (made === null) return { state: 'unreadable', traits: null };
  const thumb = await jpeg(fitInside(sharp(made.preview), THUMB_SIDE));
  await writeWhole(to.preview, made.preview);
  await writeWhole(to.thumb, thumb);
  return { state: made.state, traits: await pictureTraits(made.preview) };
}

interface Made {
  readonly preview: Buffer;
  readonly state: 'ready' | 'damaged';
}

async function fromFile(path: string, mediaType: MediaType): Promise<Made | null> {
  const preview = (failOn: 'none' | 'warning' | 'error') =>
    jpeg(fitInside(openUpright(path, failOn), PREVIEW_SIDE)).catch(() => null);
  const clean = await preview(strictness(mediaType));
  if (clean) return { preview: clean, state: 'ready' };
  const lenient = await preview('none');
  return lenient && { preview: lenient, state: 'damaged' };
}

async function fromHeic(path: string, heic: HeicDecoder): Promise<Made | null> {
  const pixels = await openHeic(path, heic);
  if (!pixels) return null;
  const small = fitInside(pixels, PREVIEW_SIDE);
  const preview = await jpeg(await withProfile(small, await colourProfile(path)));
  return { preview, state: 'ready' };
}

function fitInside(image: Sharp, side: number): Sharp {
  return image.resize(side, side, { fit: 'inside', withoutEnlargement: true });
}

/** sRGB without metadata, transparency on white. */
export function jpeg(image: Sharp): Promise<Buffer> {
  return image
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .jpeg({ quality: JPEG_QUALITY, mozjpeg: false })
    .toBuffer();
}
