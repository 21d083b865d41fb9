import { readFile, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { ExifTool } from 'exiftool-vendored';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { HouseView, PhotoView, UploadOutcome } from '#domain/contract/views';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg } from '../support/pictures.ts';
import { saidOfItself, TAIL, talkative } from '../support/said-of-itself.ts';
import { HAS_SAMPLES, sample, saySoWithoutSamples } from '../support/samples.ts';
import { newHouse, startServer, type TestServer } from '../support/server.ts';

const CAMERA = {
  ...{ 'IFD0:Make': 'Maker', 'IFD0:Model': 'Model 1', 'ExifIFD:LensModel': 'Lens 35' },
  ...{ 'ExifIFD:FocalLength': 4.25, 'ExifIFD:FocalLengthIn35mmFormat': 26 },
};
const TIME = { 'ExifIFD:DateTimeOriginal': '2026:04:01 09:30:00', 'ExifIFD:OffsetTimeOriginal': '+09:00' };
const SERIAL = { 'ExifIFD:SerialNumber': 'SN-77' };
const PLACE = {
  'GPS:GPSLatitude': expect.closeTo(35.0116, 6) as number,
  'GPS:GPSLongitude': expect.closeTo(135.768, 6) as number,
  ...{ 'GPS:GPSLatitudeRef': 'N', 'GPS:GPSLongitudeRef': 'E', 'GPS:GPSHPositioningError': 4.5 },
  ...{ 'GPS:GPSImgDirectionRef': 'T', 'GPS:GPSImgDirection': 123.5 },
};

describeOverEitherDatabase('what leaves the server', (make) => {
  const exiftool = new ExifTool();
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    house = await newHouse(server.owner);
  });
  afterAll(async () => {
    await exiftool.end();
    await server.close();
    await place.remove();
  });

  const add = async (name: string, bytes: Uint8Array): Promise<PhotoView> => {
    const { results } = await server.owner.upload<{ results: UploadOutcome[] }>(house.id, [{ name, bytes }]);
    const [outcome] = results;
    if (!outcome || outcome.outcome === 'refused') throw new Error(JSON.stringify(outcome));
    return outcome.photo;
  };
  const made = async ({ id }: PhotoView): Promise<PhotoView['pictures']> => {
    for (let i = 0; i < 400; i++) {
      const { pictures } = await server.owner.get<PhotoView>(`/photos/${id}`);
      if (pictures !== 'pending') return pictures;
      await sleep(50);
    }
    return 'pending';
  };
  const fetched = async ({ id }: PhotoView, part: string) => {
    const response = await server.owner.raw('GET', `/photos/${id}/${part}`);
    const bytes = Buffer.from(await response.arrayBuffer());
    return { response, bytes };
  };
  const saidIn = async (photo: PhotoView, part: string) => {
    const { response, bytes } = await fetched(photo, part);
    expect([response.status, response.headers.get('content-type')], part).toEqual([200, 'image/jpeg']);
    expect(bytes.includes(TAIL), part).toBe(false);
    return saidOfItself(exiftool, bytes);
  };

  it('is made of an original that does say too much', async () => {
    const bytes = await talkative(exiftool, 800);
    const names = Object.keys(await saidOfItself(exiftool, bytes)).join(' ');
    for (const said of ['GPS:GPSLatitude', 'SerialNumber', 'OwnerName', 'XMP-exif:', 'IPTC:City', 'IFD1:'])
      expect(names).toContain(said);
    expect(names).toContain('File:Comment');
    expect(bytes.includes(TAIL)).toBe(true);
  });

  it('is a copy with exactly what was asked for', async () => {
    const photo = await add('IMG.jpg', await talkative(exiftool, 801));
    expect(await saidIn(photo, 'copy')).toEqual({ ...CAMERA, ...TIME });
    expect(await saidIn(photo, 'copy?position=1')).toEqual({ ...CAMERA, ...TIME, ...PLACE });
    expect(await saidIn(photo, 'copy?serial=1')).toEqual({ ...CAMERA, ...TIME, ...SERIAL });
    const both = await saidIn(photo, 'copy?position=1&serial=1');
    expect(both).toEqual({ ...CAMERA, ...TIME, ...PLACE, ...SERIAL });
  });

  it('says no time of a photo without a date', async () => {
    const photo = await add('undated.jpg', await talkative(exiftool, 802, false));
    expect(photo.capture.state).toBe('undated');
    expect(await saidIn(photo, 'copy')).toEqual(CAMERA);
  });

  it('is nothing but the picture in thumb, preview, crop and whole', async () => {
    const photo = await add('talks.jpg', await talkative(exiftool, 803));
    expect(await made(photo)).toBe('ready');
    for (const part of ['thumb', 'preview', 'crop?xywh=percent:0,0,50,50', 'whole'])
      expect(await saidIn(photo, part), part).toEqual({});
  });

  it('keeps the whole picture of the bench beside the others', async () => {
    const photo = await add('kept.jpg', await makeJpeg(806));
    await fetched(photo, 'whole');
    const kept = path.join(
      ...[server.dataFolder, 'pictures', photo.sha256.slice(0, 2)],
      `${photo.sha256}.whole.jpg`,
    );
    const { mtimeMs } = await stat(kept);
    const { response, bytes } = await fetched(photo, 'whole');
    expect(bytes.equals(await readFile(kept))).toBe(true);
    expect(response.headers.get('cache-control')).toContain('immutable');
    expect((await stat(kept)).mtimeMs).toBe(mtimeMs);
    await rm(kept);
    expect((await fetched(photo, 'whole')).response.status).toBe(200);
  });

  // Names by RFC 6266 and RFC 8187.
  it.each([
    ['IMG.jpg', 'attachment; filename=IMG.jpg'],
    ['a b.HEIC', 'attachment; filename="a b.jpg"'],
    [
      "柱 (い一)'.jpeg",
      /^attachment; filename=".+"; filename\*=UTF-8''%E6%9F%B1%20%28%E3%81%84%E4%B8%80%29%27\.jpg$/,
    ],
  ])('is saved under a name of its own: %s', async (name, header) => {
    const photo = await add(name, await makeJpeg(810 + name.length));
    const { response } = await fetched(photo, 'copy');
    expect(response.headers.get('content-disposition')).toEqual(
      typeof header === 'string' ? header : expect.stringMatching(header),
    );
    expect(response.headers.get('cache-control')).toBe('private, no-store');
  });

  it('is as much of a damaged photo as there is', async () => {
    const bytes = await makeJpeg(820);
    const photo = await add('cut.jpg', bytes.subarray(0, Math.round(bytes.length * 0.6)));
    expect(await made(photo)).toBe('damaged');
    for (const part of ['copy', 'whole']) {
      const meta = await sharp((await fetched(photo, part)).bytes).metadata();
      expect([meta.format, meta.width, meta.height], part).toEqual(['jpeg', 640, 480]);
    }
  });

  it('is nothing for somebody without a role in the house', async () => {
    const photo = await add('IMG.jpg', await makeJpeg(830));
    const other = await newHouse(server.owner, 'Other');
    const stranger = await server.join(other.id, 'stranger@example.org');
    for (const part of ['copy', 'copy?position=1&serial=1', 'whole'])
      expect((await stranger.raw('GET', `/photos/${photo.id}/${part}`)).status, part).toBe(404);
    const wrong = await server.owner.raw('GET', `/photos/${photo.id}/copy?position=yes`);
    expect(wrong.status).toBe(400);
  });

  describe.skipIf(!HAS_SAMPLES)('of a photo of a camera', () => {
    it("is free of the maker's note that the original holds", async () => {
      const bytes = await readFile(sample('damaged', 'made', 'makernote_60k.jpg'));
      const photo = await add('note.jpg', bytes);
      expect(await made(photo)).toBe('ready');
      expect(await exifLength(bytes)).toBeGreaterThan(60_000);
      for (const part of ['thumb', 'preview', 'crop?xywh=percent:0,0,50,50', 'whole'])
        expect(await saidIn(photo, part), part).toEqual({});
      const { bytes: copy } = await fetched(photo, 'copy?position=1&serial=1');
      expect(await exifLength(copy)).toBeLessThan(1000);
    });

    it('is a JPEG without the place that a HEIC original tells', async () => {
      const bytes = await readFile(sample('heic', 'iphonexs_offset+0300_heading_small.heic'));
      const photo = await add('IMG_1.HEIC', bytes);
      expect(photo.readings.position ?? photo.readings.heading).not.toBeNull();
      await made(photo);
      for (const part of ['copy', 'whole', 'preview', 'thumb']) {
        const names = Object.keys(await saidIn(photo, part)).join(' ');
        expect(names, part).not.toMatch(/GPS|XMP|Serial|MakerNotes|Apple|IPTC|IFD1/);
      }
      const said = await saidIn(photo, 'copy?position=1');
      expect(Object.keys(said).join(' ')).toMatch(/GPS:/);
    });
  });
  saySoWithoutSamples();
});

async function exifLength(picture: Uint8Array): Promise<number> {
  return (await sharp(picture).metadata()).exif?.length ?? 0;
}
