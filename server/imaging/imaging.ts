import sharp from 'sharp';
import type { Imaging } from '../services/ports.ts';
import { cropPicture } from './crop-picture.ts';
import { HeicDecoder } from './heic-decoder.ts';
import { inspectImage } from './inspect-image.ts';
import { makePictures } from './make-pictures.ts';

export interface ImagingOptions {
  /** Path of the bundled HEIC worker. */
  readonly heicWorker: string;
}

/** One thread a picture and nothing kept: two pictures at once are the caller's business and the fastest. */
export function createImaging(options: ImagingOptions): Imaging {
  sharp.concurrency(1);
  sharp.cache(false);
  const heic = new HeicDecoder(options.heicWorker);
  return {
    inspect: (path) => inspectImage(path, heic),
    makePictures: (original, mediaType, to) => makePictures(original, mediaType, to, heic),
    crop: (original, mediaType, box, width, outline) =>
      cropPicture({ original, mediaType, box, width, outline }, heic),
    close: () => heic.close(),
  };
}
