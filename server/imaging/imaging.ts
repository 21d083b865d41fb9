import sharp from 'sharp';
import type { Imaging } from '../services/ports.ts';
import { copyPicture } from './copy-picture.ts';
import { cropPicture } from './crop-picture.ts';
import { HeicDecoder } from './heic-decoder.ts';
import { inTurn } from './in-turn.ts';
import { GreyPictures } from './grey-picture.ts';
import { inspectImage } from './inspect-image.ts';
import { makePictures } from './make-pictures.ts';
import { measureRegion } from './measure-region.ts';
import { pictureTraits } from './picture-traits.ts';

export interface ImagingOptions {
  /** Path of the bundled HEIC worker. */
  readonly heicWorker: string;
}

/** One thread a picture and nothing kept: two pictures at once are the caller's business and the fastest. */
export function createImaging(options: ImagingOptions): Imaging {
  sharp.concurrency(1);
  sharp.cache(false);
  const heic = new HeicDecoder(options.heicWorker);
  const copyTurn = inTurn(2);
  const greys = new GreyPictures(heic);
  return {
    inspect: (path) => inspectImage(path, heic),
    makePictures: (original, mediaType, to) => makePictures(original, mediaType, to, heic),
    crop: (original, mediaType, box, width, outline) =>
      cropPicture({ original, mediaType, box, width, outline }, heic),
    copy: (original, mediaType, facts) => copyTurn(() => copyPicture(original, mediaType, facts, heic)),
    traits: (preview) => pictureTraits(preview),
    measure: async (original, mediaType, regions) => {
      const picture = await greys.open(original, mediaType);
      if (!picture) return null;
      const measures = [];
      for (const region of regions) measures.push(await measureRegion(picture, region));
      return measures;
    },
    close: () => {
      greys.close();
      return heic.close();
    },
  };
}
