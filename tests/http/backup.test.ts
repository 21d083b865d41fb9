import { execFile } from 'node:child_process';
import { cp, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import type { HouseView, PhotoView } from '#domain/contract/views';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg } from '../support/pictures.ts';
import { postgresProgram } from '../support/postgres.ts';
import { verifyFile } from '../support/read-archive.ts';
import { temporaryFolder } from '../support/record.ts';
import { sampleHouse } from '../support/sample-house.ts';
import { startServer, type TestServer } from '../support/server.ts';

const run = promisify(execFile);
const [pgDump, pgRestore] = [postgresProgram('pg_dump'), postgresProgram('pg_restore')];

/** As README says it, 'Backup'. */
describeOverBothDatabases('a backup of the whole instance', (make, kind) => {
  it('brings back accounts, houses and originals', async (test) => {
    const isMissing = kind === 'server' && (pgDump === null || pgRestore === null);
    test.skip(isMissing, 'pg_dump and pg_restore are not on this machine');
    const [place, other] = [await make(), await make()];
    const [lost, kept, again] = [await temporaryFolder(), await temporaryFolder(), await temporaryFolder()];
    try {
      const server = await startServer(place, { dataFolder: lost.folder });
      const house = await sampleHouse(server.owner);
      const before = await stateOf(server, house);
      if (kind === 'server') await dumpWhileItRuns(server, house, place, kept.folder);
      await server.close();
      if (kind === 'embedded') await cp(lost.folder, kept.folder, { recursive: true });
      await rm(lost.folder, { recursive: true });

      if (kind === 'server') await restoreDump(other, kept.folder);
      await cp(kept.folder, again.folder, { recursive: true });
      const returned = await startServer(kind === 'server' ? other : place, { dataFolder: again.folder });
      try {
        // Signed in with the password from before: the configuration makes no account where there is one.
        expect(await stateOf(returned, house)).toEqual(before);
        const response = await returned.owner.raw('GET', `/houses/${house.id}/archive`);
        const file = path.join(again.folder, 'house.zip');
        await writeFile(file, Buffer.from(await response.arrayBuffer()));
        expect(await verifyFile(file)).toMatchObject({ originals: 2, head: before.ledger.head });
      } finally {
        await returned.close();
      }
    } finally {
      for (const one of [place, other, lost, kept, again]) await one.remove();
    }
  });
});

async function stateOf({ owner }: TestServer, { id }: HouseView) {
  const { photos } = await owner.get<{ photos: PhotoView[] }>(`/houses/${id}/photos`);
  const ledger = await owner.get<{ size: number; head: string }>(`/houses/${id}/ledger`);
  return {
    ledger: { size: ledger.size, head: ledger.head },
    people: await owner.get(`/houses/${id}/people`),
    photos: photos.map(({ sha256, bytes }) => ({ sha256, bytes })),
  };
}

/** First the database, then the originals: what comes in between has a file too many, never one too few. */
async function dumpWhileItRuns(
  server: TestServer,
  house: HouseView,
  { config }: PlaceForDatabase,
  to: string,
): Promise<void> {
  const url = config.kind === 'server' ? config.url : '';
  await run(pgDump ?? '', ['--format=custom', `--file=${path.join(to, 'arakabe.dump')}`, url]);
  await server.owner.upload(house.id, [{ name: 'later.jpg', bytes: await makeJpeg(9900) }]);
  await cp(path.join(server.dataFolder, 'originals'), path.join(to, 'originals'), { recursive: true });
}

async function restoreDump({ config }: PlaceForDatabase, from: string): Promise<void> {
  const url = config.kind === 'server' ? config.url : '';
  const options = ['--no-owner', '--exit-on-error', `--dbname=${url}`, path.join(from, 'arakabe.dump')];
  await run(pgRestore ?? '', options);
}
