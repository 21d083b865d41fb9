import sharp from 'sharp';
import type { MediaType } from '#domain/contract/shapes';
import type { HeicDecoder } from './heic-decoder.ts';
import { MAX_PIXELS, withinLimit } from './limits.ts';
import { isHeic, openHeic, openUpright } from './open-pixels.ts';

/** The upright picture in grey, one byte a pixel. */
export interface GreyPicture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

const KEEP_MS = 20_000;
const KEEP_MAX_BYTES = 64 * 1024 * 1024;

/** Decodes one original at a time and keeps the last for a while: regions of one photo follow one another. */
export class GreyPictures {
  readonly #heic: HeicDecoder;
  #queue: Promise<unknown> = Promise.resolve();
  #last: { path: string; picture: GreyPicture } | null = null;
  #idle: NodeJS.Timeout | null = null;

  constructor(heic: HeicDecoder) {
    this.#heic = heic;
  }

  /** Null where nothing can be decoded. */
  open(path: string, mediaType: MediaType): Promise<GreyPicture | null> {
    const opened = this.#queue.then(() => this.#open(path, mediaType));
    this.#queue = opened.catch(() => undefined);
    return opened;
  }

  close(): void {
    if (this.#idle) clearTimeout(this.#idle);
    this.#last = null;
  }

  async #open(path: string, mediaType: MediaType): Promise<GreyPicture | null> {
    if (this.#idle) clearTimeout(this.#idle);
    const kept = this.#last?.path === path ? this.#last.picture : null;
    const picture = kept ?? (await withinLimit(decode(path, mediaType, this.#heic)).catch(() => null));
    this.#last = picture && picture.data.byteLength <= KEEP_MAX_BYTES ? { path, picture } : null;
    this.#idle = setTimeout(() => this.close(), KEEP_MS).unref();
    return picture;
  }
}

async function decode(path: string, mediaType: MediaType, heic: HeicDecoder): Promise<GreyPicture | null> {
  const opened = isHeic(mediaType) ? await openHeic(path, heic) : openUpright(path, 'none');
  if (!opened) return null;
  const grey = opened.flatten({ background: '#ffffff' }).greyscale().toColourspace('b-w').raw();
  const { data, info } = await grey.toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data };
}

/** A part of it at another size; never enlarged by its callers. */
export async function shrinkPart(
  picture: GreyPicture,
  part: { left: number; top: number; width: number; height: number },
  size: { width: number; height: number },
): Promise<GreyPicture> {
  const { width, height, data } = picture;
  const cut = sharp(data, { raw: { width, height, channels: 1 }, limitInputPixels: MAX_PIXELS }).extract(
    part,
  );
  const small = cut.resize(size.width, size.height, { fit: 'fill', kernel: 'mitchell' });
  const { data: bytes, info } = await small.toColourspace('b-w').raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data: bytes };
}
