import { execFile } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { GuestView } from '#domain/contract/guests';
import type { HouseView, PhotoView } from '#domain/contract/views';
import { verifyArchive } from '#domain/verify/verify-archive';
import { compose } from '../../server/compose.ts';
import { RestoreRefused, restoreHouse } from '../../server/services/archive/restore-house.ts';
import { openArchive } from '../../server/storage/archive/open-archive.ts';
import { hashing } from '../../server/storage/hashing.ts';
import { describeOverBothDatabases, otherPlace, type PlaceForDatabase } from '../support/databases.ts';
import { ROOT } from '../support/project-files.ts';
import { verifyFile } from '../support/read-archive.ts';
import { dumpProjection, temporaryFolder } from '../support/record.ts';
import { sampleHouse } from '../support/sample-house.ts';
import { configFor, startServer, type TestServer } from '../support/server.ts';

const run = promisify(execFile);

async function download({ owner }: TestServer, house: string, to: string): Promise<string> {
  const response = await owner.raw('GET', `/houses/${house}/archive`);
  await writeFile(to, Buffer.from(await response.arrayBuffer()));
  return to;
}

async function guestsOf({ owner }: TestServer, house: string): Promise<GuestView[]> {
  return (await owner.get<{ guests: GuestView[] }>(`/houses/${house}/guests`)).guests;
}

async function originalsOf({ owner }: TestServer, house: string): Promise<string[]> {
  const { photos } = await owner.get<{ photos: PhotoView[] }>(`/houses/${house}/photos`);
  expect(photos.length).toBe(2);
  return photos.map(({ sha256 }) => sha256);
}

describeOverBothDatabases('a house restored from its archive', (make, kind) => {
  let place: PlaceForDatabase;
  let server: TestServer;
  let house: HouseView;
  let folder: string;
  let file: string;
  let remove: () => Promise<void>;
  beforeAll(async () => {
    place = await make();
    server = await startServer(place);
    house = await sampleHouse(server.owner);
    await server.owner.post(`/houses/${house.id}/guests`, {
      ...{ id: randomUUID(), shows: { mark: 'い一' }, label: 'The family' },
    });
    ({ folder, remove } = await temporaryFolder());
    file = await download(server, house.id, path.join(folder, 'house.zip'));
  });
  afterAll(async () => {
    await server.close();
    await place.remove();
    await remove();
  });

  const restoreInto = async (core: Awaited<ReturnType<typeof compose>>) => {
    const archive = await openArchive(file);
    try {
      const verdict = await verifyArchive(archive, hashing);
      return await restoreHouse(core.context, archive, hashing, verdict);
    } finally {
      await archive.close();
    }
  };

  // From the embedded database to PostgreSQL, and back; without PostgreSQL from one embedded database to another.
  it('is the same house in the other database, kept by the first account that is made there', async () => {
    const other = await otherPlace(kind);
    const target = await temporaryFolder();
    const { core: source } = server.running;
    const state = await source.context.store.read.ledgerState(house.id);
    try {
      const core = await compose({ ...configFor(other.config, target.folder), owner: null, role: 'web' });
      try {
        expect(await restoreInto(core)).toEqual({ adoptedBy: null, hasAccounts: false });
        expect(await dumpProjection(core.database)).toEqual(await dumpProjection(source.database));
        expect(await core.context.store.read.ledgerState(house.id)).toEqual(state);
        for (const sha256 of await originalsOf(server, house.id))
          expect(await readFile(core.context.files.original(sha256))).toEqual(
            await readFile(source.context.files.original(sha256)),
          );
        await expect(restoreInto(core)).rejects.toThrow(/is here already/u);
      } finally {
        await core.close();
      }
      const again = await startServer(other, { dataFolder: target.folder });
      try {
        const { houses } = await again.owner.get<{ houses: HouseView[] }>('/houses');
        expect(houses).toMatchObject([{ id: house.id, role: 'owner', counts: { photos: 2, members: 3 } }]);
        expect(await again.owner.get(`/houses/${house.id}/ledger`)).toMatchObject({ size: state.size + 1 });
        // Secrets are in no archive: the links hold, and open nothing here.
        expect(await guestsOf(server, house.id)).toMatchObject([{ label: 'The family', opensHere: true }]);
        expect(await guestsOf(again, house.id)).toMatchObject([{ label: 'The family', opensHere: false }]);
        const paper = { ...state, release: null };
        const copy = await download(again, house.id, path.join(folder, 'again.zip'));
        expect((await verifyFile(copy, { paper })).paper?.size).toBe(state.size);
      } finally {
        await again.close();
      }
    } finally {
      await other.remove();
      await target.remove();
    }
  });

  it('is taken over by the keeper of an instance that has accounts, and not taken in twice', async () => {
    const other = await make();
    const target = await startServer(other);
    try {
      expect(await restoreInto(target.running.core)).toEqual({ adoptedBy: 'owner', hasAccounts: true });
      expect((await target.owner.get<HouseView>(`/houses/${house.id}`)).role).toBe('owner');
      await expect(restoreInto(target.running.core)).rejects.toBeInstanceOf(RestoreRefused);
    } finally {
      await target.close();
      await other.remove();
    }
  });

  it('comes by a command, which leaves nothing behind where one byte is wrong', async () => {
    const other = await make();
    const target = await temporaryFolder();
    const dataFolder = path.join(target.folder, 'data');
    const environment = {
      PATH: process.env['PATH'],
      ARAKABE_DATA: dataFolder,
      ...(other.config.kind === 'server' && { DATABASE_URL: other.config.url }),
    };
    const command = (name: string, archive: string) =>
      run(process.execPath, [path.join(ROOT, 'dist', 'server', `${name}.js`), archive], {
        env: environment,
      }).then(
        ({ stdout }) => ({ code: 0, said: stdout }),
        (error: { code: number; stderr: string }) => ({ code: error.code, said: error.stderr }),
      );
    try {
      const altered = path.join(folder, 'altered.zip');
      const bytes = await readFile(file);
      const at = bytes.indexOf('"day":"2026-04-02"');
      expect(at).toBeGreaterThan(0);
      await writeFile(altered, Buffer.from(bytes.with(at + 16, '3'.charCodeAt(0))));
      const { code, said } = await command('restore', altered);
      expect([code, said]).toEqual([1, expect.stringMatching(/ledger\.jsonl, line \d+: /u)]);
      const cut = path.join(folder, 'cut.zip');
      await writeFile(cut, bytes.subarray(0, bytes.length - 1000));
      expect(await command('verify', cut)).toMatchObject({
        code: 1,
        said: expect.stringContaining(`This file has ${bytes.length - 1000} bytes`) as string,
      });
      expect(existsSync(dataFolder)).toBe(false);
      expect(await command('verify', file)).toMatchObject({
        code: 0,
        said: expect.stringContaining('Nothing is wrong') as string,
      });
      const restored = await command('restore', file);
      expect(restored).toMatchObject({
        code: 0,
        said: expect.stringContaining('first one becomes') as string,
      });
    } finally {
      await target.remove();
      await other.remove();
    }
  });
});
