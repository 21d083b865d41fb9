import { randomUUID } from 'node:crypto';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { ClosingReportView } from '#domain/contract/report-views';
import type {
  CoveringView,
  DayView,
  HouseView,
  MemberView,
  PhotoDetailView,
  PhotoView,
  UploadOutcome,
} from '#domain/contract/views';
import { makeJpeg, takenAt } from '../support/pictures.ts';
import { Client, newHouse, OWNER } from '../support/server.ts';
import { ServerProcess, type Place } from '../support/server-process.ts';
import { checkChain, checkLedgerFile, readWholeLedger } from './check-ledger.ts';
import { checkRebuild } from './check-record.ts';
import { sha256Of } from './distinct-jpegs.ts';

const REGION = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };

const PASSWORD = OWNER.password;

let place: Place;
let server: ServerProcess;
beforeEach(async () => {
  const dataFolder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-lost-'));
  const database = { kind: 'embedded' as const, folder: path.join(dataFolder, 'database') };
  place = { dataFolder, database, owner: false };
});
afterEach(async () => {
  await server.kill();
  await rm(place.dataFolder, { recursive: true, force: true });
});

it('a deleted database comes back from originals and ledger files, for whoever uses the printed link', async () => {
  const first = await startAndEnter('first@example.org');
  const house = await buildRecord(first);
  const before = await everythingOf(first, house);
  expect(before.photos.length).toBe(3);
  await server.kill();
  await rm(path.join(place.dataFolder, 'database'), { recursive: true });

  const second = await startAndEnter('second@example.org');
  const { houses } = await second.get<{ houses: HouseView[] }>('/houses');
  expect(houses).toMatchObject([{ id: house, role: 'owner', name: '谷の舟小屋' }]);
  expect(await everythingOf(second, house)).toEqual(before);
  const ledger = await readWholeLedger(second, house);
  checkChain(house, ledger);
  await checkLedgerFile(place.dataFolder, house, ledger);
  // The hand-over is said in the ledger, by the machine.
  expect(ledger.entries.at(-1)).toMatchObject({ kind: 'role.granted', by: null });
  await addPhoto(second, house, 9);
  await server.stop();
  await checkRebuild(place);
});

it('a database that fell behind, as after a power cut, catches up from the ledger file', async () => {
  const house = await buildRecord(await startAndEnter('first@example.org'));
  await server.stop();
  const database = path.join(place.dataFolder, 'database');
  const older = path.join(place.dataFolder, 'older');
  await cp(database, older, { recursive: true });

  const client = await startAndSignIn('first@example.org');
  const photo = await addPhoto(client, house, 7);
  await client.post(`/photos/${photo}/tags`, tagOf('い二', 'pegged'));
  const before = await everythingOf(client, house);
  await server.kill();
  await rm(database, { recursive: true });
  await cp(older, database, { recursive: true });

  expect(await everythingOf(await startAndSignIn('first@example.org'), house)).toEqual(before);
  await server.stop();
  await checkRebuild(place);
});

it('deleted pictures are made again when somebody asks for them', async () => {
  const owner = await startAndEnter('first@example.org');
  const house = await buildRecord(owner);
  const before = await everythingOf(owner, house);
  await rm(path.join(place.dataFolder, 'pictures'), { recursive: true });
  for (const { id } of before.photos) {
    // Both at once, as a browser asks.
    const addresses = [`/photos/${id}/thumb`, `/photos/${id}/preview`];
    for (const response of await Promise.all(addresses.map((address) => owner.raw('GET', address))))
      expect(await response.json()).toMatchObject({ status: 404, code: 'picture-not-ready' });
  }
  expect(await everythingOf(owner, house)).toEqual(before);
});

/** Makes the account through the link that the server prints while there is none. */
async function startAndEnter(email: string): Promise<Client> {
  server = await ServerProcess.start(place);
  for (let i = 0; i < 100 && server.firstLink === null; i++) await sleep(20);
  expect(server.firstLink, 'the link for the first account').not.toBeNull();
  const client = new Client(server.origin);
  await client.post(`/links/${server.firstLink}`, { name: 'Keeper', email, password: PASSWORD });
  return client;
}

async function startAndSignIn(email: string): Promise<Client> {
  server = await ServerProcess.start(place);
  const client = new Client(server.origin);
  await client.post('/session', { email, password: PASSWORD });
  return client;
}

async function buildRecord(client: Client): Promise<string> {
  const house = (await newHouse(client, '谷の舟小屋')).id;
  for (const mark of ['い一', 'い二', 'は通り貫'])
    await client.put(`/houses/${house}/members/${encodeURIComponent(mark)}`, { kind: '貫' });
  const photos = [await addPhoto(client, house, 1), await addPhoto(client, house, 2)];
  const placed = tagOf('い一', 'raised');
  await client.post(`/photos/${photos[0]}/tags`, placed);
  await client.put(`/tags/${placed.id}`, tagOf('い一', 'pegged'));
  const mistaken = tagOf('い二', 'cut');
  await client.post(`/photos/${photos[1]}/tags`, mistaken);
  await client.delete(`/tags/${mistaken.id}?reason=wrong`);
  const covering = { id: randomUUID(), name: 'Rough coat', kind: 'plaster', plannedDay: '2026-05-20' };
  const hides = ['い一', 'い二'].map((mark) => ({ mark, least: 'pegged' }));
  await client.post(`/houses/${house}/coverings`, { ...covering, hides });
  await client.post(`/coverings/${covering.id}/close`, {
    withoutRelease: 'Nobody inspects this house.',
    closedAt: '2026-05-21T03:00:00.000Z',
  });
  await client.put(`/houses/${house}/days/2026-04-01/note`, { text: '雨のち晴れ。' });
  await addPhoto(client, house, 3);
  return house;
}

async function addPhoto(client: Client, house: string, seed: number): Promise<string> {
  const bytes = await makeJpeg(seed, takenAt(`2026-04-0${seed}T09:00:00`));
  const { results } = await client.upload<{ results: UploadOutcome[] }>(house, [
    { name: `${seed}.jpg`, bytes },
  ]);
  if (results[0]?.outcome !== 'added') throw new Error(JSON.stringify(results));
  return results[0].photo.id;
}

function tagOf(mark: string, stage: string) {
  return { id: randomUUID(), mark, stage, region: REGION };
}

/** Every screen of a house as a person sees it, with the content of every picture, once all are made. */
async function everythingOf(client: Client, house: string) {
  const pictured = await untilPictured(client, house);
  const photos = await Promise.all(pictured.map(({ id }) => untilMeasured(client, id)));
  const files = photos.flatMap(({ id }) =>
    ['original', 'thumb', 'preview'].map((what) => hashOf(client, `/photos/${id}/${what}`)),
  );
  const { days: closings, counts } = await client.get<ClosingReportView>(`/houses/${house}/closing-report`);
  return {
    photos,
    files: await Promise.all(files),
    members: await client.get<{ members: MemberView[] }>(`/houses/${house}/members`),
    coverings: await client.get<{ coverings: CoveringView[] }>(`/houses/${house}/coverings`),
    closings: closings.map((day) => day.coverings),
    counts,
    notes: (await client.get<DayView>(`/houses/${house}/days/2026-04-01`)).notes,
  };
}

/** What can be read in the regions of a photo is found out by and by; of a tag that has ended perhaps never. */
async function untilMeasured(client: Client, photo: string) {
  for (const limit = Date.now() + 30_000; ;) {
    const { allTags, ...rest } = await client.get<PhotoDetailView>(`/photos/${photo}`);
    const isMeasured = allTags.every(({ state, legibility }) => state !== 'standing' || legibility.verdict);
    if (isMeasured)
      return {
        ...rest,
        allTags: allTags.map((tag) => (tag.state === 'standing' ? tag : { ...tag, legibility: null })),
      };
    if (Date.now() > limit) throw new Error(`Tags were not measured: ${JSON.stringify(allTags)}`);
    await sleep(50);
  }
}

async function untilPictured(client: Client, house: string): Promise<PhotoView[]> {
  for (const limit = Date.now() + 30_000; ;) {
    const { photos } = await client.get<{ photos: PhotoView[] }>(`/houses/${house}/photos`);
    if (photos.every(({ pictures }) => pictures === 'ready')) return photos;
    if (Date.now() > limit)
      throw new Error(`No pictures: ${photos.map(({ pictures }) => pictures).join(' ')}`);
    await sleep(50);
  }
}

async function hashOf(client: Client, address: string): Promise<string> {
  const response = await client.raw('GET', address);
  expect(response.status, address).toBe(200);
  return sha256Of(Buffer.from(await response.arrayBuffer()));
}
