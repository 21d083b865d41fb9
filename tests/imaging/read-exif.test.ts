import fc from 'fast-check';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import { ReadingsShape } from '#domain/contract/shapes';
import { TAG } from '../../server/imaging/exif-blocks.ts';
import { readExif } from '../../server/imaging/read-exif.ts';
import {
  ascii,
  intoJpeg,
  rationals,
  short,
  tiffBlock,
  TYPE,
  type Directories,
  type Entry,
} from './exif-bytes.ts';
import { put, sign, useImaging } from './some-pictures.ts';

const { file } = useImaging();
let jpeg: Buffer;
beforeAll(async () => {
  jpeg = await sign(16, 16).jpeg().toBuffer();
});

async function read(directories: Directories) {
  const path = await put(file('read.jpg'), intoJpeg(jpeg, tiffBlock(directories)));
  return ReadingsShape.parse(await readExif(path, 'image/jpeg'));
}

const PLACE = [
  ...[ascii(TAG.latRef, 'N'), rationals(TAG.lat, [35, 1], [0, 1], [4176, 100])],
  ...[ascii(TAG.lonRef, 'E'), rationals(TAG.lon, [135, 1], [46, 1], [516, 100])],
];
const without = (...tags: number[]): Entry[] => PLACE.filter(({ tag }) => !tags.includes(tag));

describe('what is read of a picture', () => {
  it('is nothing of a bare picture, without complaint', async () => {
    const readings = await readExif(await put(file('bare.jpg'), jpeg), 'image/jpeg');
    expect(Object.values(readings).filter((value) => value !== null)).toEqual([[], []]);
  });

  it('says where a thermal camera keeps its zone, if the zone stands nowhere else', async () => {
    // An APP1 segment that begins so: ExifTool's documentation, FLIR tags.
    const record = Buffer.concat([Buffer.from([0xff, 0xe1, 0, 16]), Buffer.from('FLIR\0'.padEnd(14, '\0'))]);
    const complaintsOf = async (exif: Entry[]) => {
      const plain = intoJpeg(jpeg, tiffBlock({ exif }));
      const bytes = Buffer.concat([plain.subarray(0, 2), record, plain.subarray(2)]);
      return (await readExif(await put(file('thermal.jpg'), bytes), 'image/jpeg')).complaints;
    };
    const time = ascii(TAG.original, '2026:04:01 09:30:05');
    expect(await complaintsOf([time])).toEqual(['offset-in-thermal-record']);
    expect(await complaintsOf([time, ascii(TAG.offsetOriginal, '+09:00')])).toEqual([]);
    expect((await read({ ifd0: [ascii(TAG.make, 'FLIR Systems')], exif: [time] })).complaints).toEqual([]);
  });

  it('is all of it', async () => {
    const readings = await read({
      ifd0: [ascii(TAG.make, 'Kamera'), ascii(TAG.model, '木組 7'), short(TAG.orientation, 6)],
      exif: [
        ...[ascii(TAG.original, '2026:04:01 09:30:05'), ascii(TAG.subSecOriginal, '050  ')],
        ...[ascii(TAG.offsetOriginal, '+09:00'), ascii(TAG.serial, 'A1'), ascii(TAG.lens, 'Weit')],
        ...[rationals(TAG.focalLength, [425, 100]), short(TAG.focalLength35, 26)],
      ],
      gps: [
        ...[...PLACE, rationals(TAG.altitude, [125, 10]), { ...short(TAG.altitudeRef, 1), type: 1 }],
        ...[ascii(TAG.gpsDate, '2026:04:01'), rationals(TAG.gpsTime, [0, 1], [29, 1], [5950, 100])],
        ...[
          ascii(TAG.headingRef, 'M'),
          rationals(TAG.heading, [3515, 10]),
          rationals(TAG.positionError, [5, 1]),
        ],
      ],
    });
    expect(readings).toEqual({
      wallTime: '2026-04-01T09:30:05.050',
      offsetMinutes: 540,
      gpsTime: '2026-04-01T00:29:59.500Z',
      position: {
        lat: expect.closeTo(35.0116, 9),
        lon: expect.closeTo(135.7681, 9),
        errorM: 5,
        altitudeM: -12.5,
      },
      heading: { degrees: 351.5, reference: 'magnetic' },
      orientation: 6,
      make: 'Kamera',
      model: '木組 7',
      serial: 'A1',
      lens: 'Weit',
      focalLengthMm: 4.25,
      focalLength35Mm: 26,
      complaints: [],
      rivals: [],
    });
  });

  it('takes the offset of the capture, never that of the last change (0x9010)', async () => {
    const exif = [
      ascii(TAG.original, '2026:04:01 09:30:05'),
      ascii(0x9010, '+02:00'),
      ascii(0x9012, '+03:00'),
    ];
    expect(await read({ exif })).toMatchObject({ offsetMinutes: null, wallTime: '2026-04-01T09:30:05' });
  });
});

// Exif 2.3, GPSMapDatum: in Japan TOKYO or WGS-84. ExifTool leaves the position as it is, and so do we, but say so.
describe('the datum of a position', () => {
  it.each([
    ['TOKYO', ['datum-tokyo']],
    ['tokyo ', ['datum-tokyo']],
    ['WGS-84', []],
    ['', []],
  ])('%j', async (datum, complaints) => {
    const read1 = await read({ gps: [...PLACE, ascii(TAG.mapDatum, datum)] });
    expect(read1).toMatchObject({ complaints, position: { lat: expect.closeTo(35.0116, 9) } });
  });
  it('says nothing where there is no position', async () => {
    expect((await read({ gps: [ascii(TAG.mapDatum, 'TOKYO')] })).complaints).toEqual([]);
  });
});

describe('a value that cannot be', () => {
  it.each<[string, Directories, string, string]>([
    [
      'latitude 91',
      { gps: [...without(TAG.lat), rationals(TAG.lat, [91, 1], [0, 1], [0, 1])] },
      'position',
      'position-out-of-range',
    ],
    [
      '0/0 degrees',
      { gps: [...without(TAG.lat), rationals(TAG.lat, [0, 0], [0, 1], [0, 1])] },
      'position',
      'position-not-a-number',
    ],
    ['no hemisphere', { gps: without(TAG.latRef) }, 'position', 'position-hemisphere-missing'],
    ['latitude alone', { gps: without(TAG.lon, TAG.lonRef) }, 'position', 'position-wrong-type'],
    ['heading 1/0', { gps: [rationals(TAG.heading, [1, 0])] }, 'heading', 'heading-not-a-number'],
    ['heading 361', { gps: [rationals(TAG.heading, [361, 1])] }, 'heading', 'heading-out-of-range'],
    ['orientation 9', { ifd0: [short(TAG.orientation, 9)] }, 'orientation', 'orientation-out-of-range'],
    [
      'focal length 10⁹',
      { exif: [rationals(TAG.focalLength, [1_000_000_000, 1])] },
      'focalLengthMm',
      'focal-length-out-of-range',
    ],
    ['GPS date alone', { gps: [ascii(TAG.gpsDate, '2026:04:01')] }, 'gpsTime', 'gps-time-missing'],
    ['make as number', { ifd0: [short(TAG.make, 7)] }, 'make', 'make-wrong-type'],
  ])('%s is null and complained about', async (_name, directories, field, complaint) => {
    const readings = await read(directories);
    expect([readings[field as keyof typeof readings], readings.complaints]).toEqual([null, [complaint]]);
  });

  it('costs the others nothing', async () => {
    const broken: Entry = { tag: TAG.make, type: TYPE.ascii, count: 0xffffffff, bytes: Buffer.alloc(8) };
    const readings = await read({
      ifd0: [broken, short(TAG.orientation, 3)],
      exif: [ascii(TAG.lens, 'Weit')],
    });
    expect(readings).toMatchObject({
      make: null,
      orientation: 3,
      lens: 'Weit',
      complaints: ['exif-partly-unreadable'],
    });
  });

  it('says where the focal length is unknown: 0', async () => {
    expect(await read({ exif: [short(TAG.focalLength35, 0)] })).toMatchObject({
      focalLength35Mm: null,
      complaints: [],
    });
  });
});

describe('hostile metadata', () => {
  it('cuts a camera name of a million characters, not through a character', async () => {
    const long = { ...ascii(TAG.make, 'a'.repeat(199) + '🏗'.repeat(250_000)) };
    const png = await sharp(jpeg).png().toBuffer();
    const readings = await readExif(
      await put(file('long.png'), withChunk(png, tiffBlock({ ifd0: [long] }))),
      'image/png',
    );
    expect(readings.make).toBe('a'.repeat(199));
    expect(readings.complaints).toEqual(['make-cut']);
  });

  it('reads past ten megabytes of Exif', async () => {
    const filler: Entry = {
      tag: 0x927c,
      type: TYPE.undefined,
      count: 10_000_000,
      bytes: Buffer.alloc(10_000_000),
    };
    const block = tiffBlock({ ifd0: [ascii(TAG.make, 'Kamera')], exif: [filler] });
    const path = await put(file('big.png'), withChunk(await sharp(jpeg).png().toBuffer(), block));
    expect(ReadingsShape.parse(await readExif(path, 'image/png')).make).toBe('Kamera');
  });

  it('cleans names of control and direction characters', async () => {
    expect(await read({ ifd0: [ascii(TAG.make, 'a\u0007\u202eb\n c')] })).toMatchObject({ make: 'a b c' });
  });

  it('gives readings of the agreed shape for any bytes in any directory', async () => {
    const tag = fc.constantFrom(...Object.values(TAG));
    const entry = fc.record({
      tag,
      type: fc.integer({ min: 0, max: 14 }),
      count: fc.nat(40),
      bytes: fc.uint8Array({ maxLength: 40 }),
    });
    const entries = fc.array(entry, { maxLength: 8 });
    await fc.assert(
      fc.asyncProperty(entries, entries, entries, async (ifd0, exif, gps) => {
        const { complaints } = await read({ ifd0, exif, gps });
        expect(complaints).not.toContain('readings-invalid');
      }),
      { numRuns: 200 },
    );
  });

  it('gives readings of the agreed shape for random blocks', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ minLength: 0, maxLength: 400 }), async (noise) => {
        const path = await put(
          file('noise.jpg'),
          intoJpeg(jpeg, Buffer.concat([Buffer.from('II*\0\x08\0\0\0'), noise])),
        );
        ReadingsShape.parse(await readExif(path, 'image/jpeg'));
      }),
      { numRuns: 200 },
    );
  });
});

/** With an eXIf chunk after IHDR. */
function withChunk(png: Buffer, block: Buffer): Buffer {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(block.length);
  const content = Buffer.concat([Buffer.from('eXIf'), block]);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc(content));
  return Buffer.concat([png.subarray(0, 33), length, content, sum, png.subarray(33)]);
}

/** CRC-32 of PNG, annex D of its specification. */
function crc(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) {
    value ^= byte;
    for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  }
  return (value ^ 0xffffffff) >>> 0;
}
