import { randomUUID } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { Client, OWNER, newHouse } from '../support/server.ts';
import { createTestDatabase } from '../support/postgres.ts';
import { ServerProcess, type Place } from '../support/server-process.ts';

export interface BenchSite {
  readonly kind: string;
  readonly server: ServerProcess;
  readonly client: Client;
  readonly house: string;
  /** The same data under a new server, after `work` had the database for itself. This site is then over. */
  whileStopped(work: (place: Place) => Promise<void>): Promise<BenchSite>;
  end(): Promise<void>;
}

/** The real server in a process of its own, on an empty house; null where there is no PostgreSQL. */
export async function openSite(kind: 'embedded' | 'PostgreSQL'): Promise<BenchSite | null> {
  const dataFolder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-bench-'));
  const served = kind === 'PostgreSQL' ? await createTestDatabase() : null;
  if (kind === 'PostgreSQL' && !served) return null;
  const embedded = { kind: 'embedded' as const, folder: path.join(dataFolder, 'database') };
  const database = served ? { kind: 'server' as const, url: served.url } : embedded;
  const place = { dataFolder, database };
  const server = await ServerProcess.start(place);
  const owner = new Client(server.origin);
  await owner.post('/session', OWNER);
  const { secret } = await owner.post<{ secret: string }>('/tokens', { id: randomUUID(), name: 'bench' });
  const { id: house } = await newHouse(owner);
  const remove = async () => {
    await served?.drop();
    await rm(dataFolder, { recursive: true, force: true });
  };
  return siteOn(server, { kind, place, secret, house, remove });
}

interface Ground {
  readonly kind: string;
  readonly place: Place;
  readonly secret: string;
  readonly house: string;
  readonly remove: () => Promise<void>;
}

function siteOn(server: ServerProcess, ground: Ground): BenchSite {
  const { kind, place, secret, house, remove } = ground;
  return {
    kind,
    server,
    client: new Client(server.origin, secret),
    house,
    whileStopped: async (work) => {
      await server.stop();
      await work(place);
      return siteOn(await ServerProcess.start(place), ground);
    },
    end: async () => {
      await server.stop();
      await remove();
    },
  };
}
