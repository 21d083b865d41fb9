import { randomUUID } from 'node:crypto';
import { mkdtemp, open, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { it } from 'vitest';
import type { UploadOutcome } from '#domain/contract/views';
import { makeJpeg } from '../support/pictures.ts';
import { createTestDatabase } from '../support/postgres.ts';
import { memoryOf, perSecond, sayTable, seconds, withHands, type BenchRow } from './say-table.ts';
import { openSite, type BenchSite } from './site.ts';

const TAGS = 400;
const REGION = { shape: 'rectangle', x: 0.1, y: 0.2, w: 0.3, h: 0.4 };
const body = (i: number) => ({ id: randomUUID(), mark: `い${i % 60}`, stage: 'pegged', region: REGION });
const all = Array.from({ length: TAGS }, (_, i) => i);

/** The same bytes, one line a write, each on disk before the next. */
async function bareFile(): Promise<number> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-bench-file-'));
  const handle = await open(path.join(folder, 'lines'), 'a');
  const time = await seconds(async () => {
    for (const i of all) {
      await handle.appendFile(`${JSON.stringify(body(i))}\n`);
      await handle.datasync();
    }
  });
  await handle.close();
  await rm(folder, { recursive: true });
  return time;
}

/** The same bytes, one row a committed insert, over as many connections. */
async function bareTable(hands: number): Promise<number> {
  const database = await createTestDatabase();
  if (!database) throw new Error('ARAKABE_TEST_POSTGRES is not set.');
  const pool = new pg.Pool({ connectionString: database.url, max: hands });
  // A connection that the dropped database cuts off while it is closing is no news.
  pool.on('error', () => undefined);
  await pool.query('create table line (id uuid primary key, body jsonb not null)');
  const insert = (i: number) =>
    pool.query('insert into line values ($1, $2)', [randomUUID(), JSON.stringify(body(i))]);
  const time = await seconds(() => withHands(hands, all, insert));
  await pool.end();
  await database.drop();
  return time;
}

async function tagged({ client, house }: BenchSite, hands: number): Promise<number> {
  const { results } = await client.upload<{ results: UploadOutcome[] }>(house, [
    { name: 'a.jpg', bytes: await makeJpeg(hands) },
  ]);
  const [added] = results;
  if (!added || added.outcome === 'refused') throw new Error(JSON.stringify(added));
  return seconds(() => withHands(hands, all, (i) => client.post(`/photos/${added.photo.id}/tags`, body(i))));
}

it('durable tags per second', async () => {
  const rows: BenchRow[] = [];
  for (const kind of ['embedded', 'PostgreSQL'] as const) {
    const site = await openSite(kind);
    if (!site) continue;
    for (const hands of [1, 4, 16]) {
      const bare = kind === 'embedded' ? await bareFile() : await bareTable(hands);
      const ours = await tagged(site, hands);
      rows.push({
        what: `${hands} at a time, ${kind}, memory ${memoryOf(site.server.pid)}`,
        measured: perSecond(TAGS, ours),
        bare: `${perSecond(TAGS, bare)} ${kind === 'embedded' ? 'lines with fdatasync' : 'committed inserts'}`,
        ratio: (bare / ours).toFixed(3),
      });
    }
    await site.end();
  }
  sayTable('durable tags over HTTP', rows);
});
