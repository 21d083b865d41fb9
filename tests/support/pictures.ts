import sharp from 'sharp';

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
