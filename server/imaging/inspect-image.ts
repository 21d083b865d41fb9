import { stat } from 'node:fs/promises';
import sharp, { type Metadata } from 'sharp';
import type { MediaType } from '#domain/contract/shapes';
import type { ProblemCode } from '#domain/contract/problems';
import type { Inspection, Refusal } from '../services/ports.ts';
import { isDecodable } from './decode-check.ts';
import type { HeicDecoder } from './heic-decoder.ts';
import { MAX_PIXELS, withinLimit } from './limits.ts';
import { isHeic } from './open-pixels.ts';
import { readExif } from './read-exif.ts';
import { readHead } from './read-head.ts';
import { sniff, SNIFF_BYTES, type Sniffed } from './sniff.ts';

/** Type by content, size, whether anything can be decoded, and what is written in the file. Throws only where the disk fails. */
export async function inspectImage(path: string, heic: HeicDecoder): Promise<Inspection | Refusal> {
  if ((await stat(path)).size === 0) return refuse('photo-empty');
  const head = await readHead(path, SNIFF_BYTES);
  const sniffed = sniff(head);
  if (sniffed.kind !== 'photo') return refuseKind(sniffed);
  const metadata = await withinLimit(readMetadata(path)).catch(String);
  if (typeof metadata === 'string') return refuseHeader(head, metadata);
  const { width, height } = metadata.autoOrient;
  if (width * height > MAX_PIXELS) return tooManyPixels(width * height);
  const mediaType = typeOf(sniffed.mediaType, metadata);
  const check = isDecodable(path, mediaType, metadata, heic);
  // A file that keeps the decoder busy for ever is as useless as one that gives nothing.
  const decodable = await (isHeic(mediaType) ? check : withinLimit(check).catch(() => false));
  if (!decodable) return refuse('photo-damaged');
  const readings = await readExif(path, mediaType, metadata);
  return { ok: true, mediaType, width, height, readings };
}

/** Of the header only. The limit on pixels is ours to check, so that it can be told from damage. */
function readMetadata(path: string): Promise<Metadata> {
  return sharp(path, { limitInputPixels: false, failOn: 'none', page: 0, pages: 1 }).metadata();
}

/** Brands of a HEIF file may leave open how it is coded; the decoder knows. */
function typeOf(sniffed: MediaType, { format, compression }: Metadata): MediaType {
  if (format !== 'heif') return sniffed;
  return compression === 'av1' ? 'image/avif' : 'image/heic';
}

function refuseKind(sniffed: Exclude<Sniffed, { kind: 'photo' }>): Refusal {
  const { kind, found } = sniffed;
  return refuse(kind === 'other-image' ? 'photo-type-not-supported' : 'photo-not-an-image', { found });
}

/** A header that decoders refuse for its size is not called damaged. */
function refuseHeader(head: Buffer, message: string): Refusal {
  const isPng = head.toString('latin1', 12, 16) === 'IHDR' && head.length >= 24;
  const pixels = isPng ? head.readUInt32BE(16) * head.readUInt32BE(20) : 0;
  if (pixels > MAX_PIXELS) return tooManyPixels(pixels);
  // libjpeg's own words for more than 65500 pixels a side.
  if (message.includes('Maximum supported image dimension')) return tooManyPixels(65_535 ** 2);
  return refuse('photo-damaged');
}

function tooManyPixels(pixels: number): Refusal {
  const params = { megapixels: Math.round(pixels / 1e6), limit: `${MAX_PIXELS / 1e6} MP` };
  return refuse('photo-too-many-pixels', params);
}

function refuse(code: ProblemCode, params: Refusal['params'] = {}): Refusal {
  return { ok: false, code, params };
}
