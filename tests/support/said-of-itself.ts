import { randomUUID } from 'node:crypto';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { ExifTool } from 'exiftool-vendored';
import sharp from 'sharp';
import { makeJpeg } from './pictures.ts';

/** What every Exif block has to hold, or libvips writes of its own: nothing of it tells of a person or place. */
const STRUCTURE =
  /:(Orientation|XResolution|YResolution|ResolutionUnit|YCbCrPositioning|ExifVersion|ComponentsConfiguration|FlashpixVersion|ColorSpace|ExifImageWidth|ExifImageHeight|GPSVersionID|SubSecTimeOriginal)$/;
const ALL = ['-G1', '-n', '-a', '-ee', '-u', '-U'];

/** All that ExifTool finds written in a picture, numeric, by group. Source: exiftool.org, by exiftool-vendored. */
export async function saidOfItself(exiftool: ExifTool, bytes: Uint8Array): Promise<Record<string, unknown>> {
  return inFile(bytes, async (file) => {
    const tags = await exiftool.readRaw(file, { readArgs: ALL });
    const found = Object.entries(tags).filter(
      ([name]) =>
        /:/.test(name) && !/^(System|File|ExifTool|Composite|MWG|JFIF):/.test(name) && !STRUCTURE.test(name),
    );
    // ExifTool counts a comment of JPEG among the facts of the file.
    const { 'File:Comment': comment } = tags as Record<string, unknown>;
    return { ...Object.fromEntries(found), ...(comment === undefined ? {} : { 'File:Comment': comment }) };
  });
}

/** What trails behind the picture, findable as bytes. */
export const TAIL = 'ftypmp42 trailing video';

/** A picture that says too much in every way: all blocks of Exif, XMP, IPTC, comment, thumbnail, tail. */
export async function talkative(exiftool: ExifTool, seed: number, isDated = true): Promise<Buffer> {
  const time = { DateTimeOriginal: '2026:04:01 09:30:00', OffsetTimeOriginal: '+09:00' };
  const camera = { Make: 'Maker', Model: 'Model 1', LensModel: 'Lens 35', SerialNumber: 'SN-77' };
  const lens = { FocalLength: 4.25, FocalLengthIn35mmFormat: 26, LensSerialNumber: 'L1' };
  const place = { GPSLatitude: 35.0116, GPSLatitudeRef: 'N', GPSLongitude: 135.768, GPSLongitudeRef: 'E' };
  const heading = { GPSHPositioningError: 4.5, GPSImgDirection: 123.5, GPSImgDirectionRef: 'T' };
  const people = { OwnerName: 'Somebody', Artist: 'Somebody', ImageDescription: 'said', UserComment: 'said' };
  const others = { 'XMP-exif:GPSLatitude': 35, 'XMP-dc:Creator': 'Somebody', 'IPTC:City': 'Somewhere' };
  const write = { ...camera, ...lens, ...place, ...heading, ...people, ...others, Comment: 'said' };
  const thumbnail = await sharp(await makeJpeg(seed))
    .resize(160)
    .jpeg()
    .toBuffer();
  return inFile(await makeJpeg(seed), (file) =>
    inFile(thumbnail, async (thumb) => {
      const args = ['-overwrite_original', `-ThumbnailImage<=${thumb}`];
      await exiftool.write(file, { ...write, ...(isDated ? time : {}) }, args);
      return Buffer.concat([await readFile(file), Buffer.from(TAIL)]);
    }),
  );
}

async function inFile<T>(bytes: Uint8Array, use: (file: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(path.join(tmpdir(), 'arakabe-said-'));
  const file = path.join(folder, `${randomUUID()}.jpg`);
  try {
    await writeFile(file, bytes);
    return await use(file);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
