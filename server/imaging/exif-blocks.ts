import exifr from 'exifr';

/** Exif values as they are stored, by tag number. Nothing is checked yet. */
export interface ExifBlocks {
  readonly ifd0: ReadonlyMap<number, unknown>;
  readonly exif: ReadonlyMap<number, unknown>;
  readonly gps: ReadonlyMap<number, unknown>;
  /** Some part could not be parsed, and all of its block was lost. */
  readonly broken: boolean;
}

type BlockName = 'ifd0' | 'exif' | 'gps';
const BLOCKS = ['ifd0', 'exif', 'gps'] as const;

export const TAG = {
  make: 0x010f,
  model: 0x0110,
  orientation: 0x0112,
  modified: 0x0132,
  original: 0x9003,
  digitized: 0x9004,
  offsetOriginal: 0x9011,
  focalLength: 0x920a,
  subSecOriginal: 0x9291,
  focalLength35: 0xa405,
  serial: 0xa431,
  lens: 0xa434,
  latRef: 1,
  lat: 2,
  lonRef: 3,
  lon: 4,
  altitudeRef: 5,
  altitude: 6,
  gpsTime: 7,
  headingRef: 0x10,
  heading: 0x11,
  mapDatum: 0x12,
  gpsDate: 0x1d,
  positionError: 0x1f,
} as const;

const TAGS: Record<BlockName, number[]> = {
  ifd0: [TAG.make, TAG.model, TAG.orientation, TAG.modified],
  exif: [
    ...[TAG.original, TAG.digitized, TAG.offsetOriginal, TAG.subSecOriginal],
    ...[TAG.focalLength, TAG.focalLength35, TAG.serial, TAG.lens],
  ],
  gps: [
    ...[TAG.latRef, TAG.lat, TAG.lonRef, TAG.lon, TAG.altitudeRef, TAG.altitude],
    ...[TAG.gpsTime, TAG.gpsDate, TAG.headingRef, TAG.heading, TAG.mapDatum, TAG.positionError],
  ],
};

/**
 * Only named tags are read: a hostile file decides neither how many values are made nor of which kind.
 * exifr keeps every options object that it has seen for ever, so there is one.
 */
const ALL_TAGS = {
  ...{ tiff: false, ifd1: false, interop: false, makerNote: false, userComment: false },
  ...{ jfif: false, ihdr: false, xmp: false, icc: false, iptc: false },
  ...{ reviveValues: false, translateKeys: false, translateValues: false, mergeOutput: false },
  ...Object.fromEntries(BLOCKS.map((block) => [block, { pick: TAGS[block] }])),
};

/** Parses the start of a JPEG or TIFF file, or a bare TIFF block. Never throws; null where nothing was found. */
export async function parseExifBlocks(bytes: Uint8Array): Promise<ExifBlocks | null> {
  const whole = await parse(bytes);
  return !whole.broken && isEmpty(whole) ? null : whole;
}

async function parse(bytes: Uint8Array): Promise<ExifBlocks> {
  try {
    const output: unknown = await exifr.parse(bytes, ALL_TAGS);
    const found = isRecord(output) ? output : {};
    const block = (name: BlockName) => numbered(found[name]);
    return { ifd0: block('ifd0'), exif: block('exif'), gps: block('gps'), broken: 'errors' in found };
  } catch {
    return { ifd0: new Map(), exif: new Map(), gps: new Map(), broken: true };
  }
}

function isEmpty({ ifd0, exif, gps }: ExifBlocks): boolean {
  return ifd0.size + exif.size + gps.size === 0;
}

function numbered(block: unknown): Map<number, unknown> {
  const entries = isRecord(block) ? Object.entries(block) : [];
  return new Map(
    entries.map(([tag, value]): [number, unknown] => [Number(tag), value]).filter(([tag]) => tag >= 0),
  );
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
