import type { Sharp } from 'sharp';
import sharp from 'sharp';
import type { MediaType } from '#domain/contract/shapes';
import type { Region, UnitBox } from '#domain/photo/region';
import type { HeicDecoder } from './heic-decoder.ts';
import { withinLimit } from './limits.ts';
import { jpeg } from './make-pictures.ts';
import { colourProfile, isHeic, openHeic, openUpright, withProfile } from './open-pixels.ts';
import { outlineSvg, type PixelBox } from './outline-svg.ts';

const MAX_HEIGHT = 4096;

export interface CropRequest {
  readonly original: string;
  readonly mediaType: MediaType;
  readonly box: UnitBox;
  readonly width: number;
  readonly outline?: Region | undefined;
}

/** A part of the upright original, never enlarged. Rejects where nothing can be decoded. */
export async function cropPicture(request: CropRequest, heic: HeicDecoder): Promise<Uint8Array> {
  const { original, mediaType, box, width, outline } = request;
  const opened = isHeic(mediaType) ? await openHeic(original, heic) : openUpright(original, 'none');
  if (!opened) throw new Error('This file cannot be decoded.');
  const full = await sizeOf(opened, original, mediaType);
  const part = pixelBox(box, full);
  const out = shrunk(part, width);
  const profile = isHeic(mediaType) ? await colourProfile(original) : null;
  const cut = opened.extract(part).resize(out.width, out.height, { fit: 'fill' });
  const picture = await withProfile(cut, profile);
  if (outline) picture.composite([{ input: Buffer.from(outlineSvg(outline, full, part, out)) }]);
  return withinLimit(jpeg(picture));
}

interface Size {
  readonly width: number;
  readonly height: number;
}

async function sizeOf(opened: Sharp, path: string, mediaType: MediaType): Promise<Size> {
  if (isHeic(mediaType)) {
    const { width, height } = await opened.metadata();
    return { width, height };
  }
  return (await sharp(path, { failOn: 'none', page: 0, pages: 1 }).metadata()).autoOrient;
}

/** Whole pixels that cover the box, inside the image and at least one of each. */
export function pixelBox(box: UnitBox, { width, height }: Size): PixelBox {
  const [left, right] = span(box.x, box.w, width);
  const [top, bottom] = span(box.y, box.h, height);
  return { left, top, width: right - left, height: bottom - top };
}

function span(start: number, length: number, size: number): [number, number] {
  // Rounding noise of unit coordinates must not take in another pixel.
  const from = Math.min(Math.max(Math.floor(start * size + 1e-6), 0), size - 1);
  const to = Math.min(Math.max(Math.ceil((start + length) * size - 1e-6), from + 1), size);
  return [from, to];
}

function shrunk(part: Size, width: number): Size {
  const scale = Math.min(1, width / part.width, MAX_HEIGHT / part.height);
  const side = (length: number) => Math.max(1, Math.round(length * scale));
  return { width: side(part.width), height: side(part.height) };
}
