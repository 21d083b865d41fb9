import { ExifTool } from 'exiftool-vendored';
import exifr from 'exifr';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import sharp, { type Metadata } from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { dayAfter } from '#domain/frame/invented/invented-house';
import { DEVICES } from '../../server/demo/render/facts/devices.ts';
import { PHOTO_FACTS, type PhotoFacts } from '../../server/demo/render/facts/photo-facts.ts';
import { reducedCopy } from '../../server/demo/render/facts/reduced-copy.ts';
import { writeFacts } from '../../server/demo/render/facts/write-facts.ts';
import { SHOTS } from '../../server/demo/render/shots/shots.ts';
import { SITE } from '../../server/demo/render/shots/site-on-earth.ts';
import { readExif } from '../../server/imaging/read-exif.ts';

const FIRST_DAY = '2026-04-01';
const exiftool = new ExifTool();
let folder: string;
let jpeg: Buffer;
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-facts-'));
  const noise = { type: 'gaussian', mean: 120, sigma: 30 } as const;
  jpeg = await sharp({ create: { width: 64, height: 48, channels: 3, background: '#000', noise } })
    .jpeg()
    .toBuffer();
});
afterAll(async () => {
  await rm(folder, { recursive: true });
  await exiftool.end();
});

const fileOf = ({ name }: PhotoFacts) => path.join(folder, `${name}.jpg`);
const written = (facts: PhotoFacts) => writeFacts(jpeg, facts, FIRST_DAY);
const wallTime = ({ wallTime: at }: PhotoFacts) => at && `${dayAfter(FIRST_DAY, at.day)}T${at.time}`;

describe('the table', () => {
  test('has every shot once, one copy, and no file name twice of a device', () => {
    const own = PHOTO_FACTS.filter(({ name, shot }) => name === shot);
    expect(own.map(({ name }) => name)).toEqual(SHOTS.map(({ name }) => name));
    expect(PHOTO_FACTS).toHaveLength(SHOTS.length + 1);
    const names = PHOTO_FACTS.map(({ make, fileName }) => make + fileName);
    expect(new Set(names).size).toBe(names.length);
  });

  test('has one of each trap, and one clock that is slow', () => {
    const kinds = PHOTO_FACTS.flatMap(({ trap }) => trap?.kind ?? []).sort();
    expect(kinds).toEqual(['clock-mark', 'no-position', 'no-time', 'off-site', 'reduced-copy']);
    expect(PHOTO_FACTS.find(({ trap }) => trap?.kind === 'clock-mark')?.device).toBe('site');
    for (const { device, time, wallTime: at } of PHOTO_FACTS) {
      const late = (text: string) => 60 * Number(text.slice(0, 2)) + Number(text.slice(3, 5));
      if (at) expect(late(time) - late(at.time)).toBe(DEVICES[device].minutesSlow);
    }
  });

  test('numbers of a device rise with its days', () => {
    for (const device of Object.keys(DEVICES)) {
      const own = PHOTO_FACTS.filter((photo) => photo.device === device);
      const later = (a: PhotoFacts, b: PhotoFacts) => a.day - b.day || a.count - b.count;
      expect(own.toSorted(later).map(({ count }) => count)).toEqual(
        own.map(({ count }) => count).sort((a, b) => a - b),
      );
    }
  });

  test('puts all photos but one within 60 m of the house', () => {
    const far = ({ position }: PhotoFacts) =>
      position && Math.hypot(position.lat - SITE.lat, (position.lon - SITE.lon) * 0.816) * 111_200;
    const distances = PHOTO_FACTS.flatMap((photo) => far(photo) ?? []);
    expect(distances).toHaveLength(PHOTO_FACTS.length - 2);
    const away = distances.filter((distance) => distance > 60);
    expect(away).toHaveLength(1);
    expect(away[0]).toBeGreaterThan(2000);
    expect(away[0]).toBeLessThan(3000);
  });
});

describe.each(PHOTO_FACTS.map((facts) => [facts.name, facts] as const))('%s', (_, facts) => {
  beforeAll(async () => writeFile(fileOf(facts), await written(facts)));

  test('is read by the program as the table has it', async () => {
    const read = await readExif(fileOf(facts), 'image/jpeg');
    const { make, model, serial, focal35, heading } = facts;
    expect(read).toMatchObject({
      make,
      model,
      serial,
      focalLength35Mm: focal35,
      orientation: 1,
      complaints: [],
    });
    expect({ wallTime: read.wallTime, offset: read.offsetMinutes }).toEqual(
      facts.wallTime ? { wallTime: wallTime(facts), offset: 540 } : { wallTime: null, offset: null },
    );
    expect(read.heading).toEqual(heading === null ? null : { degrees: heading, reference: 'true' });
    expect(read.position === null).toBe(facts.position === null);
    if (!facts.position || !read.position) return;
    expect(read.position.lat).toBeCloseTo(facts.position.lat, 6);
    expect(read.position.lon).toBeCloseTo(facts.position.lon, 6);
    expect(read.position.errorM).toBe(facts.position.errorM);
  });

  test('is read by exifr and by ExifTool likewise', async () => {
    const other = (await exifr.parse(fileOf(facts), { gps: true, reviveValues: false })) as Record<
      string,
      unknown
    >;
    const tags = await exiftool
      .readRaw(fileOf(facts), { readArgs: ['-fast', '-n', '-G1'] })
      .catch(() => null);
    const time = wallTime(facts)?.replaceAll('-', ':').replace('T', ' ');
    expect(other).toMatchObject({
      Make: facts.make,
      Model: facts.model,
      FocalLengthIn35mmFormat: facts.focal35,
    });
    expect(other['DateTimeOriginal']).toBe(time ?? undefined);
    if (!tags) return;
    expect(tags).toMatchObject({ 'IFD0:Make': facts.make, 'IFD0:Model': facts.model, 'IFD0:Orientation': 1 });
    expect((tags as Record<string, unknown>)['ExifIFD:DateTimeOriginal']).toBe(time ?? undefined);
    expect((tags as Record<string, unknown>)['GPS:GPSImgDirection'] ?? null).toBe(facts.heading);
    expect((tags as Record<string, unknown>)['ExifTool:Warning']).toBeUndefined();
  });
});

describe('writing facts', () => {
  const [one, other] = PHOTO_FACTS as [PhotoFacts, PhotoFacts];

  test('gives the same bytes each time, and changes no pixel', async () => {
    expect((await written(one)).equals(await written(one))).toBe(true);
    const pixels = (file: Uint8Array) => sharp(file).raw().toBuffer();
    expect((await pixels(await written(one))).equals(await pixels(jpeg))).toBe(true);
  });

  test('takes the place of what was written before', async () => {
    const again = await writeFacts(await written(other), one, FIRST_DAY);
    expect(again.equals(await written(one))).toBe(true);
  });

  test('a copy that was sent on is smaller and holds nothing', async () => {
    const large = await sharp(jpeg).resize(1600).jpeg().toBuffer();
    const copy = await reducedCopy(await writeFacts(large, one, FIRST_DAY));
    expect(await sharp(copy).metadata()).toSatisfy(
      (read: Metadata) => read.width === 1024 && read.height === 768 && !read.exif,
    );
  });
});

describe('another day of the raising', () => {
  const dated = PHOTO_FACTS.filter((facts) => facts.wallTime !== null);
  const digitsThatDiffer = (a: Buffer, b: Buffer) => a.filter((byte, i) => byte !== b[i]).length;

  test('changes nothing but the digits of the days, and back again the file is as it was', async () => {
    const [facts] = dated.filter(({ day }) => day === 0);
    const before = await writeFacts(jpeg, facts!, '2026-04-01');
    const after = await writeFacts(before, facts!, '2026-12-02');
    expect(after).toHaveLength(before.length);
    // Twice 2026-04-01 → 2026-12-02: three digits each.
    expect(digitsThatDiffer(before, after)).toBe(2 * 3);
    expect((await writeFacts(after, facts!, '2026-04-01')).equals(before)).toBe(true);
    const [pixels, later] = await Promise.all([jpeg, after].map((file) => sharp(file).raw().toBuffer()));
    expect(later?.equals(pixels ?? Buffer.alloc(0))).toBe(true);
  });

  // 2028 is a leap year.
  test.each([
    [1, '2028-02-28', '2028:02:29'],
    [6, '2025-12-27', '2026:01:02'],
  ])('so many days, %i, after %s is %s', async (day, raising, expected) => {
    const facts = dated.find((photo) => photo.wallTime?.day === day)!;
    const file = await writeFacts(jpeg, facts, raising);
    const read = (await exifr.parse(file, { reviveValues: false })) as Record<string, string>;
    expect(read['DateTimeOriginal']).toBe(`${expected} ${facts.wallTime?.time ?? ''}`);
  });
});
