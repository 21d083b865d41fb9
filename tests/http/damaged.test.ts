import { readFile, readdir } from 'node:fs/promises';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { PROBLEM_CODES } from '#domain/contract/problems';
import type { HouseView, PhotoView, UploadOutcome } from '#domain/contract/views';
import { cleanName } from '../../server/services/ingest-photo.ts';
import { describeOverEitherDatabase, type PlaceForDatabase } from '../support/databases.ts';
import { makeJpeg } from '../support/pictures.ts';
import { HAS_SAMPLES, sample, saySoWithoutSamples } from '../support/samples.ts';
import { newHouse, startServer, type TestServer } from '../support/server.ts';

const SETS = ['fixtures', 'made', 'names', 'pngsuite'];
const LIMIT_MS = 10_000;

saySoWithoutSamples();

if (HAS_SAMPLES)
  describeOverEitherDatabase('damaged and hostile files over HTTP', (make) => {
    let place: PlaceForDatabase;
    let server: TestServer;
    let house: HouseView;
    beforeAll(async () => {
      place = await make();
      server = await startServer(place);
      house = await newHouse(server.owner);
    });
    afterAll(async () => {
      await server.close();
      await place.remove();
    });

    const send = async (name: string, bytes: Uint8Array): Promise<UploadOutcome> => {
      const { results } = await server.owner.upload<{ results: UploadOutcome[] }>(house.id, [
        { name, bytes },
      ]);
      if (!results[0] || results.length > 1) throw new Error(`${results.length} answers for ${name}`);
      return results[0];
    };

    it.each(SETS)('takes or refuses each of %s with a sentence, within ten seconds', async (set) => {
      const names = await readdir(sample('damaged', set));
      expect(names.length).toBeGreaterThan(10);
      for (const name of names) {
        const start = performance.now();
        const outcome = await send(name, await readFile(sample('damaged', set, name)));
        expect(performance.now() - start, name).toBeLessThan(LIMIT_MS);
        if (outcome.outcome !== 'refused') continue;
        expect(PROBLEM_CODES, name).toContain(outcome.problem.code);
        expect(outcome.problem.status, `${name}: ${outcome.problem.code}`).toBeLessThan(500);
        expect(outcome.problem.detail, name).toContain(cleanName(name));
        expect(outcome.problem.detail, name).not.toMatch(/\{|\/tmp|Error:/);
      }
    });

    it('comes to an end with the pictures of every file that was taken, and goes on', async () => {
      let photos: PhotoView[] = [];
      for (const limit = Date.now() + 90_000; Date.now() < limit; await sleep(200)) {
        ({ photos } = await server.owner.get<{ photos: PhotoView[] }>(
          `/houses/${house.id}/photos?limit=1000`,
        ));
        if (photos.every(({ pictures }) => pictures !== 'pending')) break;
      }
      expect(photos.filter(({ pictures }) => pictures === 'pending').map(({ fileName }) => fileName)).toEqual(
        [],
      );
      const states = new Set(photos.map(({ pictures }) => pictures));
      expect(states).toContain('ready');
      expect(states).toContain('damaged');
      const good = await send('good.jpg', await makeJpeg(1));
      expect(good.outcome).toBe('added');
    }, 120_000);
  });
