import sharp from 'sharp';
import { seeded } from './seeded.ts';

/** A JPEG with bars of grey, different for each seed; Exif as a phone writes it where asked for. */
export async function makeJpeg(
  seed: number,
  exif: Record<string, string> = {},
  size = { width: 640, height: 480 },
  gps: Record<string, string> = {},
): Promise<Buffer> {
  const raw = Buffer.alloc(size.width * size.height * 3);
  for (let i = 0; i < raw.length; i++) raw[i] = ((i * (seed + 3)) ^ (i >> 7)) & 0xff;
  const image = sharp(raw, { raw: { ...size, channels: 3 } })
    .blur(2)
    .jpeg({ quality: 80 });
  return image.withExif({ IFD0: { Make: 'Test', Model: 'Bars' }, IFD2: exif, IFD3: gps }).toBuffer();
}

/** Exif of a picture taken at this wall time, with its own offset. */
export function takenAt(wallTime: string, offset = '+09:00'): Record<string, string> {
  return { DateTimeOriginal: wallTime.replaceAll('-', ':').replace('T', ' '), OffsetTimeOriginal: offset };
}

/** A sharp board of squares, to no other seed's alike: what is tagged on it can be read, and resembles nothing. */
export async function makeSquares(seed: number, exif: Record<string, string> = {}): Promise<Buffer> {
  const [width, height] = [640, 480];
  const grey = seeded(seed);
  const board = Array.from({ length: 16 * 16 }, () => 60 + Math.floor(grey() * 7) * 25);
  const raw = Buffer.alloc(width * height);
  for (let i = 0; i < raw.length; i++)
    raw[i] = board[Math.floor(Math.floor(i / width) / 30) * 16 + Math.floor((i % width) / 40)] ?? 0;
  const image = sharp(raw, { raw: { width, height, channels: 1 } }).jpeg({ quality: 92 });
  return image.withExif({ IFD0: { Make: 'Test', Model: 'Bars' }, IFD2: exif }).toBuffer();
}
