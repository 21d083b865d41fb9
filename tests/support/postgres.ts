import { randomUUID } from 'node:crypto';
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
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

/** A program that comes with the server, of the newest version on this machine; null where there is none. */
export function postgresProgram(name: string): string | null {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [
    ...versions.map((version) => path.join(debian, version, 'bin')),
    ...(process.env['PATH'] ?? '').split(path.delimiter),
  ];
  return folders.map((folder) => path.join(folder, name)).find((file) => existsSync(file)) ?? null;
}
