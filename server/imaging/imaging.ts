import { access } from 'node:fs/promises';
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
import { oneMaking } from './one-making.ts';
import { pictureTraits } from './picture-traits.ts';
import { writeWhole } from './write-whole.ts';

export interface ImagingOptions {
  /** Path of the bundled HEIC worker. */
  readonly heicWorker: string;
}

/** One thread a picture and nothing kept: two pictures at once are the caller's business and the fastest. */
export function createImaging(options: ImagingOptions): Imaging {
  sharp.concurrency(1);
  sharp.cache(false);
  const heic = new HeicDecoder(options.heicWorker);
  // Copies have a turn and a decoder of their own: somebody who downloads many delays nobody who looks.
  const forCopies = new HeicDecoder(options.heicWorker);
  const copyTurn = inTurn(1);
  const wholeTurn = inTurn(2);
  const once = oneMaking();
  const greys = new GreyPictures(heic);
  return {
    inspect: (path) => inspectImage(path, heic),
    makePictures: (original, mediaType, to) => makePictures(original, mediaType, to, heic),
    crop: (original, mediaType, box, width, outline) =>
      cropPicture({ original, mediaType, box, width, outline }, heic),
    makeWhole: (original, mediaType, to) =>
      once(to, async () => {
        if (await isThere(to)) return;
        await writeWhole(to, await wholeTurn(() => copyPicture(original, mediaType, null, heic)));
      }),
    copy: (original, mediaType, facts) => copyTurn(() => copyPicture(original, mediaType, facts, forCopies)),
    traits: (preview) => pictureTraits(preview),
    measure: async (original, mediaType, regions) => {
      const picture = await greys.open(original, mediaType);
      if (!picture) return null;
      const measures = [];
      for (const region of regions) measures.push(await measureRegion(picture, region));
      return measures;
    },
    close: async () => {
      greys.close();
      await Promise.all([heic.close(), forCopies.close()]);
    },
  };
}

function isThere(file: string): Promise<boolean> {
  return access(file).then(
    () => true,
    () => false,
  );
}
