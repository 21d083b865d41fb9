import sharp, { type Exif } from 'sharp';
import { dayAfter } from '#domain/frame/invented/invented-house';
import { OFFSET, type PhotoFacts } from './photo-facts.ts';

/** Start of image. */
const SOI_BYTES = 2;
const APP1 = 0xe1;

/**
 * The same picture to the bit, with the facts as its Exif and no other; `firstDay` is the calendar day of the
 * raising, YYYY-MM-DD. The same facts and day give the same bytes.
 */
export async function writeFacts(jpeg: Uint8Array, facts: PhotoFacts, firstDay: string): Promise<Buffer> {
  const { width, height } = await sharp(jpeg).metadata();
  // An empty picture of that size: sharp writes the size, too, into the Exif.
  const empty = await sharp({ create: { width, height, channels: 3, background: '#808080' } })
    .withExif(exifOf(facts, firstDay))
    .jpeg()
    .toBuffer();
  const bare = withoutExif(Buffer.from(jpeg));
  return Buffer.concat([bare.subarray(0, SOI_BYTES), ...exifSegments(empty), bare.subarray(SOI_BYTES)]);
}

/** Exif 2.32, as libvips writes it: IFD0 the picture, IFD2 the camera, IFD3 the place. */
function exifOf(facts: PhotoFacts, firstDay: string): Exif {
  const { make, model, serial, focal35, wallTime } = facts;
  const time = wallTime && `${dayAfter(firstDay, wallTime.day).replaceAll('-', ':')} ${wallTime.time}`;
  return {
    IFD0: { Orientation: '1', Make: make, Model: model, ...(time && { DateTime: time }) },
    IFD2: {
      ...{ BodySerialNumber: serial, FocalLengthIn35mmFilm: String(focal35) },
      ...(time && { DateTimeOriginal: time, OffsetTimeOriginal: OFFSET }),
    },
    ...(facts.position && { IFD3: gpsOf(facts) }),
  };
}

function gpsOf({ position, heading }: PhotoFacts): Record<string, string> {
  if (!position) return {};
  return {
    ...{ GPSLatitudeRef: 'N', GPSLatitude: degrees(position.lat) },
    ...{ GPSLongitudeRef: 'E', GPSLongitude: degrees(position.lon) },
    GPSHPositioningError: `${Math.round(position.errorM * 10)}/10`,
    ...(heading !== null && { GPSImgDirectionRef: 'T', GPSImgDirection: `${Math.round(heading * 10)}/10` }),
  };
}

/** Exif allows a fraction of a degree and no minutes; exact to 1 cm. */
const degrees = (value: number) => `${Math.round(value * 1e7)}/10000000 0/1 0/1`;

interface Segment {
  readonly start: number;
  readonly end: number;
}

/** JPEG (ITU-T T.81, B.1.1.4): marker, then a length of two bytes that counts itself. */
function exifIn(jpeg: Buffer): Segment[] {
  const found: Segment[] = [];
  for (let at = SOI_BYTES; at + 4 <= jpeg.length && jpeg[at + 1] !== 0xda;) {
    const end = at + 2 + jpeg.readUInt16BE(at + 2);
    const isExif = jpeg[at + 1] === APP1 && jpeg.toString('latin1', at + 4, at + 10) === 'Exif\0\0';
    if (isExif) found.push({ start: at, end });
    at = end;
  }
  return found;
}

const exifSegments = (jpeg: Buffer) => exifIn(jpeg).map(({ start, end }) => jpeg.subarray(start, end));

function withoutExif(jpeg: Buffer): Buffer {
  const [first] = exifIn(jpeg);
  return first ? withoutExif(Buffer.concat([jpeg.subarray(0, first.start), jpeg.subarray(first.end)])) : jpeg;
}
