import { readFile, mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import sharp from 'sharp';
import { afterAll, beforeAll, it } from 'vitest';
import type { PhotoView } from '#domain/contract/views';
import { JPEG_QUALITY, PREVIEW_SIDE, THUMB_SIDE } from '../../server/imaging/limits.ts';
import { readExif } from '../../server/imaging/read-exif.ts';
import { HAS_SAMPLES, sample, sampleNames } from '../support/samples.ts';
import { withComment } from '../torture/distinct-jpegs.ts';
import { memoryOf, perSecond, sayTable, seconds, withHands, type BenchRow } from './say-table.ts';
import { openSite, type BenchSite } from './site.ts';

const PHOTOS = 60;
let folder: string;
let files: { name: string; bytes: Buffer }[];

const REAL = ['exif_real', 'iphone6s_offset+0100_heading_gps.jpg'];

/** A phone's own file where there is one: what decoding costs depends on the grain, which an enlarged picture lacks. */
async function twelveMegapixels(): Promise<Buffer> {
  if (HAS_SAMPLES) return readFile(sample(...REAL));
  const grain = { type: 'gaussian', mean: 128, sigma: 30 } as const;
  const create = { width: 4032, height: 3024, channels: 3, background: '#888', noise: grain } as const;
  return sharp({ create }).jpeg({ quality: 90 }).toBuffer();
}

beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-bench-photos-'));
  const large = await twelveMegapixels();
  files = Array.from({ length: PHOTOS }, (_, i) => ({
    name: `${i}.jpg`,
    bytes: withComment(large, `frame ${i}`),
  }));
  for (const { name, bytes } of files) await writeFile(path.join(folder, name), bytes);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** The same two pictures from the same files on disk and nothing else, two at a time. */
async function bareLoop(): Promise<void> {
  sharp.concurrency(1);
  sharp.cache(false);
  await withHands(2, files, async ({ name }) => {
    const fit = { fit: 'inside', withoutEnlargement: true } as const;
    const preview = await sharp(path.join(folder, name))
      .autoOrient()
      .resize(PREVIEW_SIDE, PREVIEW_SIDE, fit)
      .jpeg({ quality: JPEG_QUALITY })
      .toBuffer();
    const thumb = await sharp(preview)
      .resize(THUMB_SIDE, THUMB_SIDE, fit)
      .jpeg({ quality: JPEG_QUALITY })
      .toBuffer();
    await writeFile(path.join(folder, `${name}.preview`), preview);
    await writeFile(path.join(folder, `${name}.thumb`), thumb);
  });
}

/** RFC 7578, by hand: fetch's own FormData costs more of the shared processor than the server's reading of it. */
function multipart(name: string, bytes: Buffer): Uint8Array<ArrayBuffer> {
  const head = `--bench\r\nContent-Disposition: form-data; name="photos"; filename="${name}"\r\nContent-Type: image/jpeg\r\n\r\n`;
  return Buffer.concat([Buffer.from(head), bytes, Buffer.from('\r\n--bench--\r\n')]);
}

/** From the first byte sent until the last preview is there, as two browsers send: two files at a time. */
async function endToEnd({ client, house }: BenchSite): Promise<void> {
  await withHands(2, files, async ({ name }) => {
    const response = await client.raw('POST', `/houses/${house}/photos`, {
      headers: { 'content-type': 'multipart/form-data; boundary=bench' },
      body: multipart(name, await readFile(path.join(folder, name))),
    });
    if (!response.ok) throw new Error(`${name}: ${response.status}`);
    await response.arrayBuffer();
  });
  for (;;) {
    const { photos } = await client.get<{ photos: PhotoView[] }>(`/houses/${house}/photos?limit=1000`);
    if (photos.length === PHOTOS && photos.every(({ pictures }) => pictures === 'ready')) return;
    await sleep(200);
  }
}

const READ_FILES = 500;

/** Seconds a file, two at a time as the server reads. Real cameras' files where there are some, over and over. */
async function readingTime(paths: readonly string[]): Promise<number> {
  const repeated = Array.from({ length: READ_FILES }, (_, i) => paths[i % paths.length] ?? '');
  return (await seconds(() => withHands(2, repeated, (file) => readExif(file, 'image/jpeg')))) / READ_FILES;
}

/** What reading the metadata takes of all that is done to a photo, in the same run. */
async function readingRows(ingestS: number, kind: string): Promise<BenchRow[]> {
  const cameras = sampleNames('exif_real').filter((name) => /\.jpe?g$/iu.test(name));
  const sets: [string, string[]][] = [['those taken in', files.map(({ name }) => path.join(folder, name))]];
  if (HAS_SAMPLES) sets.push(['of real cameras', cameras.map((name) => sample('exif_real', name))]);
  const rows: BenchRow[] = [];
  for (const [what, paths] of sets) {
    const time = await readingTime(paths);
    rows.push({
      what: `metadata of ${READ_FILES} files, ${what}, ${kind} (aim: ≤ 0.05)`,
      measured: perSecond(1, time),
      bare: `${perSecond(1, ingestS)} whole ingest`,
      ratio: (time / ingestS).toFixed(3),
    });
  }
  return rows;
}

it('photos per second, end to end', async () => {
  const rows: BenchRow[] = [];
  await bareLoop();
  for (const kind of ['embedded', 'PostgreSQL'] as const) {
    const site = await openSite(kind);
    if (!site) continue;
    const bare = await seconds(bareLoop);
    const ours = await seconds(() => endToEnd(site));
    rows.push({
      what: `12 MP JPEGs, ${kind}, memory ${memoryOf(site.server.pid)}`,
      measured: perSecond(PHOTOS, ours),
      bare: `${perSecond(PHOTOS, bare)} sharp alone`,
      ratio: (bare / ours).toFixed(2),
    });
    rows.push(...(await readingRows(ours / PHOTOS, kind)));
    await site.end();
  }
  sayTable('photos in, thumbnail and preview made (aim: ratio ≥ 0.8)', rows);
});
