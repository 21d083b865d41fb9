import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { TAG } from '../../server/imaging/exif-blocks.ts';
import { ascii, intoJpeg, rationals, short, tiffBlock } from '../imaging/exif-bytes.ts';
import { makeJpeg } from '../support/pictures.ts';
import { HAS_SAMPLES, sample } from '../support/samples.ts';

/** A file as it is given to the browser. */
export interface SitePhoto {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

/**
 * Wall times that the real pictures carry (ExifTool's truth.json beside them); none of them has an offset
 * but the box, whose phone stood four hours behind UTC. The deck holds no time at all.
 */
const TIMES = {
  deck: {},
  box: { DateTimeOriginal: '2020:05:04 18:44:06', OffsetTimeOriginal: '-04:00' },
  cranes: { DateTimeOriginal: '2001:07:11 11:18:07' },
  house: { DateTimeOriginal: '2002:02:24 13:43:45' },
} as const;
const FILES = {
  deck: 'timber_deck_debian.jpg',
  box: 'timber_box_iphone11pro.HEIC',
  cranes: 'site_cityhall_cranes.jpg',
  house: 'house_suburban.jpg',
} as const;
export type PhotoName = keyof typeof FILES;
export const PHOTO_NAMES = ['deck', 'box', 'cranes', 'house'] as const satisfies readonly PhotoName[];

/** Four photographs: real ones, or where the samples are absent, made ones with the same times. */
export async function sitePhotos(): Promise<Record<PhotoName, SitePhoto>> {
  const [deck, box, cranes, house] = await Promise.all(PHOTO_NAMES.map(sitePhoto));
  if (!deck || !box || !cranes || !house) throw new Error('unreachable');
  return { deck, box, cranes, house };
}

async function sitePhoto(name: PhotoName, seed: number): Promise<SitePhoto> {
  const file = FILES[name];
  if (HAS_SAMPLES) {
    const mimeType = file.endsWith('.HEIC') ? 'image/heic' : 'image/jpeg';
    return { name: file, mimeType, buffer: await readFile(sample('buildings', file)) };
  }
  const buffer = await makeJpeg(seed + 1, TIMES[name], { width: 1600, height: 1200 });
  return { name: file.replace(/HEIC$/, 'jpg'), mimeType: 'image/jpeg', buffer };
}

/** A JPEG whose camera data is wrong in several ways, and which two readers date differently. */
export async function doubtfulPhoto(): Promise<SitePhoto> {
  const times = ['2026:04:01 09:30:00', '2026:04:08 09:30:00'].map((time) => ascii(TAG.original, time));
  const block = tiffBlock({
    ifd0: [ascii(TAG.make, 'Kamera'), short(TAG.orientation, 9)],
    exif: [...times, rationals(TAG.focalLength, [1_000_000_000, 1]), ascii(TAG.offsetOriginal, '+9')],
    gps: [rationals(TAG.lat, [91, 1], [0, 1], [0, 1]), ascii(TAG.latRef, 'N')],
  });
  const picture = await sharp(await makeJpeg(98)).toBuffer();
  return { name: 'doubtful.jpg', mimeType: 'image/jpeg', buffer: intoJpeg(picture, block) };
}

/** A JPEG whose headers are whole and whose picture is missing. */
export async function damagedPhoto(): Promise<SitePhoto> {
  const name = 'truncated_before_sos.jpg';
  if (HAS_SAMPLES)
    return { name, mimeType: 'image/jpeg', buffer: await readFile(sample('damaged', 'made', name)) };
  const whole = await makeJpeg(99);
  // ITU-T T.81, table B.1: the marker FFDA (SOS) begins the picture itself.
  return { name, mimeType: 'image/jpeg', buffer: whole.subarray(0, whole.indexOf(Buffer.of(0xff, 0xda))) };
}
