import exifr from 'exifr';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { shiftDates } from '../../server/demo/exif/shift-dates.ts';
import { ascii, intoJpeg, short, tiffBlock } from './exif-bytes.ts';

const DATES = { DateTime: '2026:04:01 08:00:00' };
const TAKEN = {
  DateTimeOriginal: '2026:04:01 07:58:13',
  DateTimeDigitized: '2026:04:01 07:58:13',
  OffsetTimeOriginal: '+09:00',
  SubSecTimeOriginal: '250',
};
// 07:58 in Japan is still the day before by UTC.
const GPS = { GPSDateStamp: '2026:03:31', GPSTimeStamp: '22/1 58/1 13/1' };

function photo(): Promise<Buffer> {
  const create = { width: 64, height: 48, channels: 3 as const, background: '#a86' };
  return sharp({ create })
    .jpeg()
    .withExif({ IFD0: { Make: 'Test', ...DATES }, IFD2: TAKEN, IFD3: GPS })
    .toBuffer();
}

/** As a library reads it: wall times as they are written. */
async function read(jpeg: Uint8Array): Promise<Record<string, unknown>> {
  const options = { tiff: true, exif: true, gps: true, reviveValues: false };
  return (await exifr.parse(Buffer.from(jpeg), options)) as Record<string, unknown>;
}

const bytesThatDiffer = (a: Uint8Array, b: Uint8Array) =>
  [...a.keys()].filter((at) => a[at] !== b[at]).length;

it('moves every day by as many, and no clock time, offset or other value', async () => {
  const before = await photo();
  const after = shiftDates(before, 30);
  expect(await read(after)).toEqual({
    ...(await read(before)),
    ModifyDate: '2026:05:01 08:00:00',
    DateTimeOriginal: '2026:05:01 07:58:13',
    CreateDate: '2026:05:01 07:58:13',
    GPSDateStamp: '2026:04:30',
  });
});

it('changes nothing but the digits of these days, and back again the file is as it was', async () => {
  const before = await photo();
  const after = shiftDates(before, 245);
  expect(after).toHaveLength(before.length);
  // Three times 2026-04-01 → 2026-12-02 and once 2026-03-31 → 2026-12-01: three digits each.
  expect(bytesThatDiffer(before, after)).toBe(4 * 3);
  expect(Buffer.from(shiftDates(after, -245)).equals(before)).toBe(true);
  const [pixels, later] = await Promise.all([before, after].map((jpeg) => sharp(jpeg).raw().toBuffer()));
  expect(later?.equals(pixels ?? Buffer.alloc(0))).toBe(true);
});

it('goes over the end of February and of a year', async () => {
  const days = async (by: number) => (await read(shiftDates(await photo(), by)))['DateTimeOriginal'];
  // 2028 is a leap year.
  expect(await days(699)).toBe('2028:02:29 07:58:13');
  expect(await days(-91)).toBe('2025:12:31 07:58:13');
});

it('leaves a day that is none, a short text, and a file without Exif as they are', async () => {
  const bare = await sharp(await photo())
    .jpeg()
    .toBuffer();
  const block = tiffBlock({
    ifd0: [ascii(0x0132, '    :  :     :  :  '), short(0x0112, 1)],
    exif: [ascii(0x9003, '0000:00:00 00:00:00'), ascii(0x9004, '2026:04')],
  });
  const blank = intoJpeg(bare, block);
  expect(Buffer.from(shiftDates(blank, 30)).equals(blank)).toBe(true);
  expect(Buffer.from(shiftDates(bare, 30)).equals(bare)).toBe(true);
  const cut = (await photo()).subarray(0, 200);
  expect(() => shiftDates(cut, 30)).not.toThrow();
});
