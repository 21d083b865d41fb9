import sharp from 'sharp';
import type { PictureTraits } from '../services/ports.ts';
import { laplacianVariance } from './laplacian-variance.ts';

/**
 * Longer side at which sharpness is measured: pictures of different size become comparable in blur alone, since
 * what a larger one shows beyond that is not seen (see `sharpestOf`).
 */
const SIDE = 1024;

export async function pictureTraits(picture: Buffer | string): Promise<PictureTraits> {
  const [hash, sharpness] = await Promise.all([differenceHash(picture), wholeSharpness(picture)]);
  return { hash, sharpness };
}

/** dHash: 9 × 8 grey values, row by row a bit for each two neighbours, set where left < right. */
export async function differenceHash(picture: Buffer | string): Promise<string> {
  const grey = sharp(picture).greyscale().resize(9, 8, { fit: 'fill' }).toColourspace('b-w').raw();
  const values = await grey.toBuffer();
  let bits = 0n;
  for (let y = 0; y < 8; y += 1)
    for (let x = 0; x < 8; x += 1) {
      const [left, right] = [values[y * 9 + x] as number, values[y * 9 + x + 1] as number];
      bits = (bits << 1n) | (left < right ? 1n : 0n);
    }
  return bits.toString(16).padStart(16, '0');
}

/** Variance of the Laplacian at one size: of pictures of one scene the largest is the sharpest. */
async function wholeSharpness(picture: Buffer | string): Promise<number> {
  const { data, info } = await sharp(picture)
    .greyscale()
    .resize(SIDE, SIDE, { fit: 'inside', withoutEnlargement: true })
    .toColourspace('b-w')
    .raw()
    .toBuffer({ resolveWithObject: true });
  return laplacianVariance(data, info.width, info.height);
}
