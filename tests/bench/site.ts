import { randomUUID } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { Client, OWNER, newHouse } from '../support/server.ts';
import { createTestDatabase } from '../support/postgres.ts';
import { ServerProcess } from '../support/server-process.ts';

export interface BenchSite {
  readonly kind: string;
  readonly server: ServerProcess;
  readonly client: Client;
  readonly house: string;
  end(): Promise<void>;
}

/** The real server in a process of its own, on an empty house; null where there is no PostgreSQL. */
export async function openSite(kind: 'embedded' | 'PostgreSQL'): Promise<BenchSite | null> {
  const dataFolder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-bench-'));
  const served = kind === 'PostgreSQL' ? await createTestDatabase() : null;
  if (kind === 'PostgreSQL' && !served) return null;
  const embedded = { kind: 'embedded' as const, folder: path.join(dataFolder, 'database') };
  const database = served ? { kind: 'server' as const, url: served.url } : embedded;
  const server = await ServerProcess.start({ dataFolder, database });
  const owner = new Client(server.origin);
  await owner.post('/session', OWNER);
  const { secret } = await owner.post<{ secret: string }>('/tokens', { id: randomUUID(), name: 'bench' });
  const client = new Client(server.origin, secret);
  return {
    kind,
    server,
    client,
    house: (await newHouse(client)).id,
    end: async () => {
      await server.stop();
      await served?.drop();
      await rm(dataFolder, { recursive: true, force: true });
    },
  };
}
