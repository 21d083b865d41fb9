import { ExifTool } from 'exiftool-vendored';
import sharp from 'sharp';
import { afterAll, describe, expect, it, test } from 'vitest';
import { readdir, readFile, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import type { Capture } from '#domain/contract/capture';
import { oneMaking } from '../../server/imaging/one-making.ts';
import { copyFacts, copyName } from '../../server/services/copy-photo.ts';
import { saidOfItself, TAIL, talkative } from '../support/said-of-itself.ts';
import { someReadings } from '../support/some-readings.ts';
import { put, useImaging } from './some-pictures.ts';

const { imaging, file } = useImaging();
const exiftool = new ExifTool();
afterAll(() => exiftool.end());

const readings = someReadings({
  ...{
    make: 'Maker',
    model: 'Model 1',
    serial: 'SN-77',
    lens: 'Lens 35',
    focalLengthMm: 4.25,
    focalLength35Mm: 26,
  },
  position: { lat: -35.0123456, lon: 135.7654321, errorM: 4.5, altitudeM: 60 },
  heading: { degrees: 123.5, reference: 'true' },
});
const capture: Capture = {
  state: 'dated',
  instant: '2024-05-01T00:30:00.250Z',
  offsetMinutes: 540,
  day: '2024-05-01',
  source: 'house-zone',
  uncertaintyS: 300,
  flags: [],
  rejected: [],
  correction: null,
  byHand: null,
};
const BASE = {
  ...{ 'IFD0:Make': 'Maker', 'IFD0:Model': 'Model 1', 'ExifIFD:LensModel': 'Lens 35' },
  ...{ 'ExifIFD:FocalLength': 4.25, 'ExifIFD:FocalLengthIn35mmFormat': 26 },
  ...{ 'ExifIFD:DateTimeOriginal': '2024:05:01 09:30:00', 'ExifIFD:OffsetTimeOriginal': '+09:00' },
};

const tagsOf = async (file: string) => saidOfItself(exiftool, await readFile(file));

async function copied(wish: { position: boolean; serial: boolean }): Promise<string> {
  const facts = copyFacts({ readings, capture }, wish);
  const original = await put(file('talkative.jpg'), await talkative(exiftool, 77));
  return put(file('copy.jpg'), Buffer.from(await imaging().copy(original, 'image/jpeg', facts)));
}

describe('a copy to hand on', () => {
  it('holds the time and the camera, and nothing else', async () => {
    expect(await tagsOf(await copied({ position: false, serial: false }))).toEqual(BASE);
  });

  it('holds the serial number where asked for', async () => {
    const tags = await tagsOf(await copied({ position: false, serial: true }));
    expect(tags).toEqual({ ...BASE, 'ExifIFD:SerialNumber': 'SN-77' });
  });

  it('holds the place where asked for', async () => {
    const tags = await tagsOf(await copied({ position: true, serial: false }));
    const { 'GPS:GPSLatitude': lat, 'GPS:GPSLongitude': lon, ...rest } = tags;
    expect(Number(lat)).toBeCloseTo(35.0123456, 6);
    expect(Number(lon)).toBeCloseTo(135.7654321, 6);
    expect(rest).toEqual({
      ...BASE,
      ...{ 'GPS:GPSLatitudeRef': 'S', 'GPS:GPSLongitudeRef': 'E', 'GPS:GPSHPositioningError': 4.5 },
      ...{ 'GPS:GPSImgDirectionRef': 'T', 'GPS:GPSImgDirection': 123.5 },
    });
  });

  it.each([
    ['IMG_1.HEIC', 'IMG_1.jpg'],
    ['../../etc/passwd', '_.._etc_passwd.jpg'],
    ['.jpg', 'jpg.jpg'],
    ['', 'photo.jpg'],
    ['IMG.jpg', 'IMG.jpg'],
    [`${'a'.repeat(199)}🏗🏗.png`, `${'a'.repeat(199)}🏗.jpg`],
    ['half \ud83c.jpg', 'half _.jpg'],
    ['柱 い一.jpeg', '柱 い一.jpg'],
  ])('of %s is called %s', (name, copy) => expect(copyName(name)).toBe(copy));
});

describe('the whole picture of the bench', () => {
  const made = async (name: string) => {
    const original = await put(file(`${name}.original`), await talkative(exiftool, 78));
    const whole = file(`${name}.whole.jpg`);
    return { whole, make: () => imaging().makeWhole(original, 'image/jpeg', whole), original };
  };

  it('holds nothing at all, nor any bytes of the tail', async () => {
    const { whole, make } = await made('plain');
    await make();
    expect(await tagsOf(whole)).toEqual({});
    expect((await readFile(whole)).includes(TAIL)).toBe(false);
    expect(await sharp(whole).metadata()).toMatchObject({ format: 'jpeg', width: 640, height: 480 });
  });

  it('is made once, however many ask, and never again', async () => {
    const { whole, make, original } = await made('once');
    await Promise.all(Array.from({ length: 8 }, make));
    const { ino, mtimeMs } = await stat(whole);
    // What is not there cannot be decoded again.
    await rm(original);
    await make();
    expect(await stat(whole)).toMatchObject({ ino, mtimeMs });
    expect((await readdir(path.dirname(whole))).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('is asked for again after it could not be made', async () => {
    const { whole, make, original } = await made('later');
    const bytes = await readFile(original);
    await rm(original);
    await expect(make()).rejects.toThrow();
    await put(original, bytes);
    await make();
    expect((await stat(whole)).size).toBeGreaterThan(0);
  });
});

test('one making serves all who ask while it lasts, and the next asks anew', async () => {
  const once = oneMaking();
  let times = 0;
  const make = async () => {
    times += 1;
    await Promise.resolve();
  };
  await Promise.all([once('a', make), once('a', make), once('b', make)]);
  expect(times).toBe(2);
  await once('a', make);
  expect(times).toBe(3);
});
