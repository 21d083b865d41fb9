import { existsSync } from 'node:fs';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { describe } from 'vitest';
import type { DatabaseConfig } from '../../server/config.ts';
import { createTestDatabase } from './postgres.ts';

export interface PlaceForDatabase {
  readonly config: DatabaseConfig;
  remove(): Promise<void>;
}

/** Where another run has been over the embedded database already, PostgreSQL alone: half of the time. */
const skipsEmbedded =
  process.env['ARAKABE_TEST_SKIP_EMBEDDED'] === '1' && process.env['ARAKABE_TEST_POSTGRES'] !== undefined;

/** Runs the same tests over the embedded database and over a PostgreSQL server; each `make()` gives an empty one. */
export function describeOverBothDatabases(
  name: string,
  body: (make: () => Promise<PlaceForDatabase>, kind: DatabaseConfig['kind']) => void,
): void {
  describe.skipIf(skipsEmbedded)(`${name} (embedded)`, () => body(makeEmbedded, 'embedded'));
  describe.skipIf(!process.env['ARAKABE_TEST_POSTGRES'])(`${name} (PostgreSQL)`, () =>
    body(makeServer, 'server'),
  );
}

/**
 * Where time is short over one of them, for a name always the same one; by hand over both. Not for what is about
 * a database itself, nor for the whole job over HTTP.
 */
export function describeOverEitherDatabase(
  name: string,
  body: (make: () => Promise<PlaceForDatabase>, kind: DatabaseConfig['kind']) => void,
): void {
  if (process.env['CI'] !== 'true' || skipsEmbedded || process.env['ARAKABE_TEST_POSTGRES'] === undefined)
    return describeOverBothDatabases(name, body);
  if (name.length % 2 === 0) describe(`${name} (embedded)`, () => body(makeEmbedded, 'embedded'));
  else describe(`${name} (PostgreSQL)`, () => body(makeServer, 'server'));
}

/** An empty database of the other kind; where there is no PostgreSQL, of the same. */
export function otherPlace(kind: DatabaseConfig['kind']): Promise<PlaceForDatabase> {
  return kind === 'embedded' && process.env['ARAKABE_TEST_POSTGRES'] ? makeServer() : makeEmbedded();
}

/** Copies what initdb makes, which takes seconds; where the test command has made none, the program makes it. */
export async function spareInitdb(folder: string): Promise<void> {
  const empty = process.env['ARAKABE_TEST_EMBEDDED'];
  if (empty !== undefined && !existsSync(folder)) await cp(empty, folder, { recursive: true });
}

async function makeEmbedded(): Promise<PlaceForDatabase> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-embedded-'));
  const database = path.join(folder, 'database');
  await spareInitdb(database);
  return {
    config: { kind: 'embedded', folder: database },
    remove: () => rm(folder, { recursive: true, force: true }),
  };
}

export async function makeServer(): Promise<PlaceForDatabase> {
  const database = await createTestDatabase();
  if (!database) throw new Error('ARAKABE_TEST_POSTGRES is not set.');
  return { config: { kind: 'server', url: database.url }, remove: () => database.drop() };
}
