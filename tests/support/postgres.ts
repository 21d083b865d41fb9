import { randomUUID } from 'node:crypto';
import pg from 'pg';

export interface TestDatabase {
  readonly url: string;
  drop(): Promise<void>;
}

/** A new, empty database on the server that the test command started; null where there is none. */
export async function createTestDatabase(): Promise<TestDatabase | null> {
  const server = process.env['ARAKABE_TEST_POSTGRES'];
  if (!server) return null;
  const name = `test_${randomUUID().replaceAll('-', '')}`;
  await runOn(server, `create database ${name}`);
  const url = new URL(server);
  url.pathname = `/${name}`;
  return { url: url.href, drop: () => runOn(server, `drop database if exists ${name} with (force)`) };
}

async function runOn(url: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
