import { readFile, readdir } from 'node:fs/promises';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect } from 'vitest';
import type { CoveringView, DayView, PhotoDetailView } from '#domain/contract/views';
import { openDatabase } from '../../server/storage/open-database.ts';
import { rebuildAll } from '../../server/storage/rebuild.ts';
import { dumpProjection } from '../support/record.ts';
import type { Client } from '../support/server.ts';
import type { Place } from '../support/server-process.ts';
import { sha256Of } from './distinct-jpegs.ts';
import type { Journal } from './journal.ts';
import type { Told } from './told.ts';

const PICTURES_LIMIT_MS = 60_000;

/** The screens show what the ledger tells: all coverings and notes, and these photos with all their tags. */
export async function checkViews(
  client: Client,
  house: string,
  told: Told,
  photos: readonly string[],
): Promise<void> {
  for (const photo of photos) {
    const view = await client.get<PhotoDetailView>(`/photos/${photo}`);
    expect(view).toMatchObject(told.photos.get(photo) ?? { id: 'a photo that the ledger has' });
    const tags = [...told.tags.values()].filter((tag) => tag['photo'] === photo);
    expect(byId(view.allTags)).toMatchObject(byId(tags));
    expect(view.allTags.length).toBe(tags.length);
  }
  const { coverings } = await client.get<{ coverings: CoveringView[] }>(`/houses/${house}/coverings`);
  expect(coverings.length).toBe(told.coverings.size);
  expect(byId(coverings)).toMatchObject(byId([...told.coverings.values()]));
  for (const [day, text] of told.notes) {
    const { notes } = await client.get<DayView>(`/houses/${house}/days/${day}`);
    expect(notes.map((note) => note.text)).toEqual([text]);
  }
}

function byId<T extends object>(things: readonly T[]): T[] {
  const id = (thing: T) => String((thing as { id?: unknown }).id);
  return [...things].sort((a, b) => (id(a) < id(b) ? -1 : 1));
}

/** No original is missing, altered or without a statement; nothing is left where files come in. */
export async function checkFiles(place: Place, told: Told, photos: readonly string[]): Promise<void> {
  const originals = path.join(place.dataFolder, 'originals');
  const stored = (await readdir(originals, { recursive: true })).filter((name) => name.includes(path.sep));
  const hashes = [...told.photos.values()].map((photo) => String(photo['sha256']));
  expect(stored.map((name) => path.basename(name)).sort()).toEqual(hashes.sort());
  for (const photo of photos) {
    const sha256 = String(told.photos.get(photo)?.['sha256']);
    const bytes = await readFile(path.join(originals, sha256.slice(0, 2), sha256));
    expect(sha256Of(bytes)).toBe(sha256);
  }
  // A server that shares its folder leaves what is younger than a day: it could be another's.
  if (place.database.kind === 'embedded')
    expect(await readdir(path.join(place.dataFolder, 'incoming'))).toEqual([]);
}

/** Downloads what was uploaded, and waits until each photo has its pictures and shows them. */
export async function checkPictures(client: Client, told: Told, photos: readonly string[]): Promise<void> {
  const limit = Date.now() + PICTURES_LIMIT_MS;
  for (const photo of photos) {
    const original = await client.raw('GET', `/photos/${photo}/original`);
    expect(sha256Of(Buffer.from(await original.arrayBuffer()))).toBe(told.photos.get(photo)?.['sha256']);
    let pictures = 'pending';
    while (pictures === 'pending' && Date.now() < limit) {
      ({ pictures } = await client.get<PhotoDetailView>(`/photos/${photo}`));
      if (pictures === 'pending') await sleep(50);
    }
    expect(pictures, `pictures of ${photo}`).toBe('ready');
    for (const size of ['thumb', 'preview']) {
      const picture = await client.raw('GET', `/photos/${photo}/${size}`);
      const bytes = new Uint8Array(await picture.arrayBuffer());
      // A JPEG from its first to its last marker, SOI to EOI (ITU-T T.81, table B.1): not torn.
      expect([picture.status, ...bytes.slice(0, 2), ...bytes.slice(-2)]).toEqual([
        200, 0xff, 0xd8, 0xff, 0xd9,
      ]);
    }
  }
}

/** Accepted photos that a killed process left without one of their pictures. */
export async function countPictureless({ dataFolder }: Place, { acknowledged }: Journal): Promise<number> {
  const made = new Set(await readdir(path.join(dataFolder, 'pictures'), { recursive: true }));
  const hashes = acknowledged.flatMap(({ claims }) => claims.flatMap(({ file }) => file?.sha256 ?? []));
  const isMade = (sha256: string, size: string) =>
    made.has(path.join(sha256.slice(0, 2), `${sha256}.${size}.jpg`));
  return hashes.filter((sha256) => !isMade(sha256, 'thumb') || !isMade(sha256, 'preview')).length;
}

/** Every entry has its projection and no row is without an entry: a rebuild changes nothing. No server may run on it. */
export async function checkRebuild(place: Place): Promise<void> {
  const database = await openDatabase(place.database);
  try {
    const before = await dumpProjection(database);
    expect((await rebuildAll(database.db)).length).toBeGreaterThan(0);
    const after = await dumpProjection(database);
    for (const [table, rows] of Object.entries(before)) expect(after[table], table).toEqual(rows);
  } finally {
    await database.close();
  }
}
