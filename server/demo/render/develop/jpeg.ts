import sharp from 'sharp';
import type { Size } from '../camera.ts';

/** The best of these with which the file is small enough. */
const QUALITIES = [80, 74, 68, 62];
const ENOUGH_BYTES = 400_000;

/** As a phone writes it: a little sharpened, colours at half the size. */
export async function jpegOf(bytes: Uint8Array, size: Size): Promise<Buffer> {
  let file: Buffer = Buffer.alloc(0);
  for (const quality of QUALITIES) {
    file = await encoded(bytes, size, quality);
    if (file.length < ENOUGH_BYTES) break;
  }
  return file;
}

function encoded(bytes: Uint8Array, { width, height }: Size, quality: number): Promise<Buffer> {
  return sharp(bytes, { raw: { width, height, channels: 3 } })
    .sharpen({ sigma: 0.8, m1: 0.5, m2: 1.2 })
    .jpeg({ quality, chromaSubsampling: '4:2:0' })
    .toBuffer();
}
