import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ReadingsShape } from '#domain/contract/shapes';
import { TAG } from '../../server/imaging/exif-blocks.ts';
import { readExif } from '../../server/imaging/read-exif.ts';
import { rivalReadings } from '../../server/imaging/rival-readings.ts';
import { parseExifAgain } from '../../server/imaging/second-reader.ts';
import { HAS_SAMPLES, sample, sampleNames, saySoWithoutSamples } from '../support/samples.ts';
import { seeded } from '../support/seeded.ts';
import { someReadings } from '../support/some-readings.ts';
import { ascii, intoJpeg, rationals, short, tiffBlock } from './exif-bytes.ts';

let folder: string;
let jpeg: Buffer;
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-readers-'));
  jpeg = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#888' } })
    .jpeg()
    .toBuffer();
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function read(bytes: Uint8Array) {
  const file = path.join(folder, 'photo.jpg');
  await writeFile(file, bytes);
  return readExif(file, 'image/jpeg');
}

describe('two readers of one file', () => {
  it('agree on a whole block, in the same terms', async () => {
    const block = tiffBlock({
      ifd0: [ascii(TAG.make, 'Kamera'), short(TAG.orientation, 6)],
      exif: [ascii(TAG.original, '2026:04:01 09:30:05'), rationals(TAG.focalLength, [425, 100])],
      gps: [
        ...[ascii(TAG.latRef, 'S'), rationals(TAG.lat, [35, 1], [0, 1], [4176, 100])],
        ...[ascii(TAG.lonRef, 'E'), rationals(TAG.lon, [135, 1], [46, 1], [516, 100])],
        ...[rationals(TAG.heading, [3515, 10]), rationals(TAG.positionError, [5, 1])],
      ],
    });
    expect(await read(intoJpeg(jpeg, block))).toMatchObject({ rivals: [], complaints: [] });
    const again = parseExifAgain(block);
    expect([...(again?.ifd0 ?? [])]).toEqual([
      [TAG.make, 'Kamera'],
      [TAG.orientation, 6],
    ]);
    expect(again?.exif.get(TAG.focalLength)).toBe(4.25);
    expect(again?.gps.get(TAG.lat)).toEqual([35, 0, 41.76]);
    expect(again?.gps.get(TAG.heading)).toBe(351.5);
  });

  it('that read two different times keep both, and say so', async () => {
    // The same tag twice in one directory: each reader keeps another one.
    const exif = ['2026:04:01 09:30:00', '2026:04:08 09:30:00'].map((time) => ascii(TAG.original, time));
    const { wallTime, rivals, complaints } = await read(intoJpeg(jpeg, tiffBlock({ exif })));
    expect(rivals).toEqual([{ field: 'wallTime', first: wallTime, second: expect.any(String) as string }]);
    expect(new Set(rivals.flatMap(({ first, second }) => [first, second]))).toEqual(
      new Set(['2026-04-01T09:30:00', '2026-04-08T09:30:00']),
    );
    expect(complaints).toEqual(['readers-differ']);
  });

  const place = { lat: 35, lon: 135, errorM: 5, altitudeM: null };
  it.each([
    ['rounding of a position', { position: place }, { position: { ...place, lat: 35.000009 } }, []],
    ['another place', { position: place }, { position: { ...place, lat: 35.0001 } }, ['position']],
    ['a value that one lacks', { wallTime: '2026-04-01T09:30:00' }, { wallTime: null }, []],
    ['digits of a second', { wallTime: '2026-04-01T09:30:00' }, { wallTime: '2026-04-01T09:30:00.5' }, []],
    ['another zone', { offsetMinutes: 540 }, { offsetMinutes: 0 }, ['offsetMinutes']],
    ['a name in an unknown encoding', { make: 'Fotó' }, { make: 'FotÃ³' }, []],
    ['another serial number', { serial: 'A1' }, { serial: 'A2' }, ['serial']],
  ])('%s', (_what, first, second, fields) => {
    const rivals = rivalReadings(someReadings(first), someReadings(second));
    expect(rivals.map(({ field }) => field)).toEqual(fields);
  });
});

describe('real files, some of their bytes changed', () => {
  saySoWithoutSamples();
  it.runIf(HAS_SAMPLES)(
    'are read without an error, and come to an end, 800 times',
    async () => {
      const names = sampleNames('exif_real').slice(0, 40);
      const heads = await Promise.all(names.map(async (name) => readFile(sample('exif_real', name))));
      const random = seeded(20261126);
      for (let run = 0; run < 800; run += 1) {
        const bytes = Buffer.from((heads[run % heads.length] as Buffer).subarray(0, 60_000));
        for (let flips = 1 + Math.floor(random() * 12); flips > 0; flips -= 1)
          bytes[12 + Math.floor(random() * 1500)] = Math.floor(random() * 256);
        ReadingsShape.parse(await read(bytes));
      }
    },
    120_000,
  );
});
