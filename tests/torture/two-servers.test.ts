import { randomUUID } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { PhotoView, UploadOutcome } from '#domain/contract/views';
import { createTestDatabase } from '../support/postgres.ts';
import { makeJpeg } from '../support/pictures.ts';
import { seeded } from '../support/seeded.ts';
import { Client, newHouse, OWNER } from '../support/server.ts';
import { ServerProcess, type Place } from '../support/server-process.ts';
import { checkChain, readWholeLedger } from './check-ledger.ts';
import { checkRebuild } from './check-record.ts';
import { jpegSource, sha256Of } from './distinct-jpegs.ts';

let dataFolder: string;
let servers: ServerProcess[];
beforeEach(async () => {
  dataFolder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-two-'));
  servers = [];
});
afterEach(async () => {
  for (const server of servers) await server.kill();
  await rm(dataFolder, { recursive: true, force: true });
});

const launch = (place: Place): ServerProcess => {
  const server = ServerProcess.launch(place);
  servers.push(server);
  return server;
};
const enter = async ({ origin }: ServerProcess): Promise<Client> => {
  const client = new Client(origin);
  await client.post('/session', OWNER);
  return client;
};

describe('two servers on one data folder with the embedded database', () => {
  const place = (): Place => ({
    dataFolder,
    database: { kind: 'embedded', folder: path.join(dataFolder, 'database') },
  });

  it('the second refuses with one sentence, and the first goes on', async () => {
    const first = launch(place());
    await first.untilUp();
    const owner = await enter(first);
    const house = await newHouse(owner);

    const second = launch(place());
    const ending = await Promise.race([second.ended, sleep(10_000, 'still running after 10 s')]);
    expect(ending).toEqual({ code: 1, signal: null });
    expect(second.standardError.trimEnd().split('\n')).toEqual([
      `Another Arakabe (process ${first.pid}) is working on ${dataFolder}. ` +
        'Stop it first, or give this one a folder of its own with ARAKABE_DATA.',
    ]);

    const [added] = await upload(owner, house.id, 1);
    expect(added?.outcome).toBe('added');
    expect((await readWholeLedger(owner, house.id)).size).toBe(3);
    // The one that was refused must not have taken the lock away with it.
    expect(await launch(place()).ended).toMatchObject({ code: 1 });
    expect(first.complaints).toBe('');
  });

  it('of several that start at the same moment exactly one comes up', async () => {
    const all = Array.from({ length: 3 }, () => launch(place()));
    const upOrEnded = all.map((server) =>
      Promise.race([server.ended, server.untilUp().catch(() => 'ended')]),
    );
    await Promise.all(upOrEnded);
    await Promise.all(all.filter(({ isUp }) => !isUp).map(({ ended }) => ended));
    expect(all.filter(({ isUp }) => isUp).length).toBe(1);
  });
});

describe.skipIf(!process.env['ARAKABE_TEST_POSTGRES'])(
  'two servers on one PostgreSQL and one data folder',
  () => {
    let place: Place;
    let drop: () => Promise<void>;
    beforeEach(async () => {
      const database = await createTestDatabase();
      if (!database) throw new Error('ARAKABE_TEST_POSTGRES is not set.');
      place = { dataFolder, database: { kind: 'server', url: database.url } };
      drop = () => database.drop();
    });
    afterEach(async () => {
      for (const server of servers) await server.kill();
      await drop();
    });

    it('start together on an empty database, and one tells the other what it takes in', async () => {
      const [one, other] = [launch(place), launch(place)];
      await Promise.all([one.untilUp(), other.untilUp()]);
      const [here, there] = await Promise.all([enter(one), enter(other)]);
      const house = await newHouse(here);
      const stream = await listen(there, house.id);
      const [added] = await upload(here, house.id, 2);
      if (added?.outcome !== 'added') throw new Error(JSON.stringify(added));
      const { id, sha256 } = added.photo;
      await stream.hears(`"kind":"photo.added","photo":"${id}"`);
      await stream.hears(`{"type":"pictures","photo":"${id}","pictures":"ready",`);
      await stream.end();
      expect(await there.get<PhotoView>(`/photos/${id}`)).toMatchObject({ sha256, pictures: 'ready' });
      const original = await there.raw('GET', `/photos/${id}/original`);
      expect(sha256Of(Buffer.from(await original.arrayBuffer()))).toBe(sha256);
      expect((await there.raw('GET', `/photos/${id}/thumb`)).status).toBe(200);
    });

    it('write to one house at the same time without losing or doubling anything', async () => {
      const [one, other] = [launch(place), launch(place)];
      await Promise.all([one.untilUp(), other.untilUp()]);
      const [here, there] = await Promise.all([enter(one), enter(other)]);
      const house = (await newHouse(here)).id;
      const file = (await jpegSource())(seeded(1));
      const same = await Promise.all(
        [here, there, here, there].map((client) => client.upload<Results>(house, [file])),
      );
      const outcomes = same.flatMap(({ results }) => results);
      expect(outcomes.map(({ outcome }) => outcome).sort()).toEqual(
        ['added', ...Array<string>(3).fill('already-here')].sort(),
      );
      const photo = outcomes[0]?.outcome === 'refused' ? '' : outcomes[0]?.photo.id;
      const ids = Array.from({ length: 40 }, () => randomUUID());
      // Each tag is sent through both servers, as a client does that changes over to the other one.
      const region = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };
      await Promise.all(
        ids.flatMap((id) =>
          [here, there].map((client) =>
            client.post(`/photos/${photo}/tags`, { id, mark: 'い一', stage: 'cut', region }),
          ),
        ),
      );
      const ledger = await readWholeLedger(there, house);
      checkChain(house, ledger);
      const tags = ledger.entries.filter(({ kind }) => kind === 'tag.placed');
      expect(tags.map(({ payload }) => (payload as { tag: string }).tag).sort()).toEqual([...ids].sort());
      for (const server of servers) expect(await server.stop()).toEqual({ code: 0, signal: null });
      await checkRebuild(place);
    });
  },
);

interface Results {
  results: UploadOutcome[];
}

async function upload(client: Client, house: string, seed: number): Promise<UploadOutcome[]> {
  const bytes = await makeJpeg(seed);
  return (await client.upload<Results>(house, [{ name: `${seed}.jpg`, bytes }])).results;
}

/** Reads the event stream of a house until a text has come. */
async function listen(client: Client, house: string) {
  const controller = new AbortController();
  const { body } = await client.raw('GET', `/houses/${house}/events`, { signal: controller.signal });
  let heard = '';
  const reading = (async () => {
    const decoder = new TextDecoder();
    for await (const chunk of body as unknown as AsyncIterable<Uint8Array>)
      heard += decoder.decode(chunk, { stream: true });
  })().catch(() => undefined);
  return {
    hears: async (text: string) => {
      for (const limit = Date.now() + 20_000; !heard.includes(text); await sleep(20))
        if (Date.now() > limit) throw new Error(`Never heard ${text} in ${heard}`);
    },
    end: () => {
      controller.abort();
      return reading;
    },
  };
}
