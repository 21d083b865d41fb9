import sharp from 'sharp';
import type { Complaint, NumberField } from '#domain/contract/complaints';
import { ReadingsShape, type MediaType, type Readings } from '#domain/contract/shapes';
import { parseExifBlocks, TAG, type ExifBlocks } from './exif-blocks.ts';
import { nameValue, numberValue, offsetValue, wallTimeValue, type Complain } from './exif-values.ts';
import { gpsTimeValue, headingValue, positionValue } from './gps-values.ts';
import { readHead } from './read-head.ts';
import { rivalReadings } from './rival-readings.ts';
import { parseExifAgain } from './second-reader.ts';
import { xmpTime } from './xmp-time.ts';

/** Metadata blocks that the pixel library already took out of the file. */
export interface EmbeddedBlocks {
  readonly exif?: Uint8Array | undefined;
  readonly xmp?: Uint8Array | undefined;
}

const BLOCK_MAX_BYTES = 1024 * 1024;
/** Exif stands in the first segments of a JPEG; a TIFF may keep it anywhere. */
const HEAD_BYTES: Partial<Record<MediaType, number>> = {
  'image/jpeg': BLOCK_MAX_BYTES,
  'image/tiff': 16 * BLOCK_MAX_BYTES,
};
const NOTHING: Readings = {
  ...{ wallTime: null, offsetMinutes: null, gpsTime: null, position: null, heading: null },
  ...{ orientation: null, make: null, model: null, serial: null, lens: null },
  ...{ focalLengthMm: null, focalLength35Mm: null, complaints: [], rivals: [] },
};
const INVALID: Complaint = 'readings-invalid';
const FOCAL_RANGE = { min: 0, max: 6000 };

/**
 * Everything that Arakabe reads of a picture's metadata. Never throws and reads a bounded part of the file;
 * what is missing is null, what is wrong is null with a complaint.
 */
export async function readExif(
  path: string,
  mediaType: MediaType,
  embedded?: EmbeddedBlocks,
): Promise<Readings> {
  const complaints = new Set<Complaint>();
  const complain: Complain = (code) => complaints.add(code);
  const blocks = embedded ?? (await embeddedBlocks(path));
  const sources = await bytesToRead(path, mediaType, blocks.exif).catch(() => []);
  const first = await firstWithTags(sources, parseExifBlocks);
  // From the other end: a block that another library took out of the file first.
  const second = await firstWithTags(sources.toReversed(), parseExifAgain);
  const found = filled(first, second);
  if (first?.broken) complain('exif-partly-unreadable');
  if (!found && blocks.exif) complain('exif-unreadable');
  const rivals =
    first && second ? rivalReadings(readAll(first, blocks.xmp), readAll(second, blocks.xmp)) : [];
  if (rivals.length > 0) complain('readers-differ');
  const read = readAll(found, blocks.xmp, complain);
  if (read.offsetMinutes === null && sources.some(holdsThermalRecord)) complain('offset-in-thermal-record');
  const checked = ReadingsShape.safeParse({ ...read, complaints: [...complaints], rivals });
  return checked.success ? checked.data : { ...NOTHING, complaints: [INVALID] };
}

function readAll(
  found: ExifBlocks | null,
  xmp: Uint8Array | undefined,
  complain: Complain = () => {},
): Readings {
  return {
    ...NOTHING,
    ...readTime(found, xmp, complain),
    ...readPlace(found, complain),
    ...readCamera(found, complain),
  };
}

/**
 * JPEG and TIFF are read from their own bytes first. For the other containers only the block counts that
 * sharp took out: exifr misses the Exif of some HEIC files, never returns from a HEIC box of length zero and
 * inflates the colour profile of a PNG without bound.
 */
async function bytesToRead(path: string, mediaType: MediaType, block?: Uint8Array): Promise<Uint8Array[]> {
  const length = HEAD_BYTES[mediaType];
  const own = length === undefined ? [] : [await readHead(path, length)];
  return block ? [...own, bareTiff(block)] : own;
}

/** What a reader finds in the first of the places that gives it anything. */
async function firstWithTags(
  sources: readonly Uint8Array[],
  parse: (bytes: Uint8Array) => ExifBlocks | null | Promise<ExifBlocks | null>,
): Promise<ExifBlocks | null> {
  let empty: ExifBlocks | null = null;
  for (const bytes of sources) {
    const found = await parse(bytes);
    if (found && found.ifd0.size + found.exif.size + found.gps.size > 0) return found;
    empty ??= found;
  }
  return empty;
}

/** What the first reader lost is taken from the second; where both have a value, the first speaks. */
function filled(first: ExifBlocks | null, second: ExifBlocks | null): ExifBlocks | null {
  if (!first || !second) return first ?? second;
  const join = (block: 'ifd0' | 'exif' | 'gps') => new Map([...second[block], ...first[block]]);
  return { ifd0: join('ifd0'), exif: join('exif'), gps: join('gps'), broken: first.broken };
}

/** Without the `Exif\0\0` that JPEG puts before the block. */
function bareTiff(block: Uint8Array): Uint8Array {
  const head = Buffer.from(block.subarray(0, 6)).toString('latin1');
  return block.subarray(head === 'Exif\0\0' ? 6 : 0, BLOCK_MAX_BYTES);
}

/**
 * Whether a JPEG has the record of a thermal camera, an APP1 segment of its own, in which time and zone stand
 * once more (ExifTool's documentation, FLIR tags). It is not read; to guess in silence would be worse.
 */
function holdsThermalRecord(bytes: Uint8Array): boolean {
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
  // The name of the maker may stand before it as text.
  for (let at = head.indexOf('FLIR\0', 4, 'latin1'); at >= 0; at = head.indexOf('FLIR\0', at + 1, 'latin1'))
    if (head[at - 4] === 0xff && head[at - 3] === 0xe1) return true;
  return false;
}

async function embeddedBlocks(path: string): Promise<EmbeddedBlocks> {
  try {
    const { exif, xmp } = await sharp(path, { limitInputPixels: false, failOn: 'none' }).metadata();
    return { exif, xmp };
  } catch {
    return {};
  }
}

type TimeReadings = Pick<Readings, 'wallTime' | 'offsetMinutes' | 'gpsTime'>;

function readTime(found: ExifBlocks | null, xmp: Uint8Array | undefined, complain: Complain): TimeReadings {
  const exif = found?.exif ?? new Map<number, unknown>();
  const gpsTime = found ? gpsTimeValue(found.gps, complain) : null;
  const wallTime = wallTimeValue(exif.get(TAG.original), exif.get(TAG.subSecOriginal), complain);
  const offsetMinutes = offsetValue(exif.get(TAG.offsetOriginal), complain);
  if (wallTime !== null) return { wallTime, offsetMinutes, gpsTime };
  const other = xmp ? xmpTime(xmp) : null;
  if (other) complain('time-from-xmp');
  else if (exif.has(TAG.digitized)) complain('only-digitized-time');
  else if (found?.ifd0.has(TAG.modified)) complain('only-modified-time');
  return { wallTime: other?.wallTime ?? null, offsetMinutes: other?.offsetMinutes ?? offsetMinutes, gpsTime };
}

function readPlace(found: ExifBlocks | null, complain: Complain): Pick<Readings, 'position' | 'heading'> {
  if (!found) return { position: null, heading: null };
  return { position: positionValue(found.gps, complain), heading: headingValue(found.gps, complain) };
}

type CameraReadings = Omit<Readings, keyof TimeReadings | 'position' | 'heading' | 'complaints' | 'rivals'>;

function readCamera(found: ExifBlocks | null, complain: Complain): CameraReadings {
  const ifd0 = found?.ifd0 ?? new Map<number, unknown>();
  const exif = found?.exif ?? new Map<number, unknown>();
  const focal = (tag: number, field: NumberField) =>
    numberValue(exif.get(tag), FOCAL_RANGE, field, complain) || null;
  return {
    orientation: orientationOf(ifd0.get(TAG.orientation), complain),
    make: nameValue(ifd0.get(TAG.make), 'make', complain),
    model: nameValue(ifd0.get(TAG.model), 'model', complain),
    serial: nameValue(exif.get(TAG.serial), 'serial', complain),
    lens: nameValue(exif.get(TAG.lens), 'lens', complain),
    // Zero means unknown (Exif 0xA405).
    focalLengthMm: focal(TAG.focalLength, 'focal-length'),
    focalLength35Mm: focal(TAG.focalLength35, 'focal-length-35'),
  };
}

function orientationOf(value: unknown, complain: Complain): number | null {
  const orientation = numberValue(value, { min: 1, max: 8 }, 'orientation', complain);
  return Number.isInteger(orientation) ? orientation : null;
}
