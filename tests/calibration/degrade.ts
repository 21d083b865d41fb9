import sharp, { type Sharp } from 'sharp';
import type { GreyPicture } from '../../server/imaging/grey-picture.ts';
import { seeded } from '../support/seeded.ts';

/** What is done to a picture; lengths in px of the outcome. */
export interface Harm {
  readonly blur?: number;
  /** Factor on the grey values. */
  readonly gain?: number;
  /** Standard deviation of added noise, in grey values. */
  readonly noise?: number;
  /** JPEG quality. */
  readonly quality?: number;
}

/** Blur, then light, then noise of the sensor, then rounding, then JPEG: the order in which a camera does it. */
export async function harm(picture: GreyPicture, { blur = 0, gain = 1, noise = 0, quality }: Harm) {
  const soft = blur > 0 ? gaussianBlur(picture, blur) : Float64Array.from(picture.data);
  const chance = seeded(7);
  const data = Uint8Array.from(soft, (grey) => {
    const bell = Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
    return Math.max(0, Math.min(255, Math.round(grey * gain + noise * bell)));
  });
  const harmed = { ...picture, data };
  return quality === undefined ? harmed : asJpeg(harmed, quality);
}

/** Shrunk to so many px across, from `across` px. */
export async function shrinkTo(picture: GreyPicture, factor: number): Promise<GreyPicture> {
  const { width, height, data } = picture;
  const small = sharp(data, { raw: { width, height, channels: 1 } }).resize(
    Math.max(1, Math.round(width * factor)),
    Math.max(1, Math.round(height * factor)),
    { fit: 'fill', kernel: 'mitchell' },
  );
  return grey(small);
}

export async function grey(image: Sharp): Promise<GreyPicture> {
  const { data, info } = await image
    .greyscale()
    .toColourspace('b-w')
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data };
}

async function asJpeg({ width, height, data }: GreyPicture, quality: number): Promise<GreyPicture> {
  const bytes = await sharp(data, { raw: { width, height, channels: 1 } })
    .jpeg({ quality })
    .toBuffer();
  return grey(sharp(bytes));
}

/** Separable, in floating point, the edge repeated. */
export function gaussianBlur({ width, height, data }: GreyPicture, sigma: number): Float64Array {
  const reach = Math.ceil(4 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const sum = weights.reduce((a, b) => a + b, 0);
  const pass = (from: ArrayLike<number>, dx: number, dy: number) =>
    Float64Array.from({ length: width * height }, (_, at) => {
      const [x, y] = [at % width, Math.floor(at / width)];
      let value = 0;
      for (let k = -reach; k <= reach; k += 1) {
        const i = Math.max(0, Math.min(width - 1, x + k * dx));
        const j = Math.max(0, Math.min(height - 1, y + k * dy));
        value += (weights[k + reach] as number) * (from[j * width + i] as number);
      }
      return value / sum;
    });
  return pass(pass(data, 1, 0), 0, 1);
}
