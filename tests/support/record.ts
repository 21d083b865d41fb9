import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import type { PhotoFacts } from '#domain/contract/shapes';
import type { AccountView } from '#domain/contract/views';
import type { DatabaseConfig } from '../../server/config.ts';
import { someReadings } from './some-readings.ts';
import type { Context } from '../../server/services/context.ts';
import { photoId } from '../../server/services/ingest-photo.ts';
import { makeGuestSecret } from '../../server/storage/accounts/guest-secrets.ts';
import { LedgerFolder } from '../../server/storage/ledger-folder.ts';
import { migrate } from '../../server/storage/migrate.ts';
import { openDatabase, type Database } from '../../server/storage/open-database.ts';
import { rebuildIfOlder } from '../../server/storage/rebuild.ts';
import { recordStore } from '../../server/storage/record-store.ts';
import { PROJECTED } from '../../server/storage/tables.ts';

export const MIGRATIONS = path.join(import.meta.dirname, '../../server/storage/migrations');

export const HARU: AccountView = {
  id: 'haru',
  name: 'Carpenter',
  email: 'carpenter@example.org',
  keeper: true,
};
export const AKI: AccountView = { id: 'aki', name: 'Builder', email: 'builder@example.org', keeper: false };

export interface TestRecord {
  readonly database: Database;
  readonly context: Context;
  /** Sets the time that the next statements get. */
  at(instant: string): void;
  close(): Promise<void>;
}

/** The record over an empty or existing database, without HTTP and without image work. `shared`: a clock for several. */
export async function openRecord(
  config: DatabaseConfig,
  houses?: string,
  shared?: () => Date,
): Promise<TestRecord> {
  const database = await openDatabase(config);
  await migrate(database.pool, MIGRATIONS);
  await rebuildIfOlder(database.db);
  const keeper = houses === undefined ? null : await LedgerFolder.open(database.db, houses);
  let clock = Date.parse('2026-04-01T00:00:00.000Z');
  const now = shared ?? (() => new Date((clock += 1000)));
  const store = recordStore({
    db: database.db,
    keeper,
    now,
    enqueuePictures: () => Promise.resolve(),
    enqueueLegibility: () => Promise.resolve(),
    enqueueStamp: () => Promise.resolve(),
  });
  // Files and imaging are absent on purpose, and of accounts all but the secrets of guests: a test that reaches
  // for them fails loudly.
  const accounts = { makeGuestSecret: (guest) => makeGuestSecret(database.db, guest) } as Context['accounts'];
  const context = { store, now, accounts } as Context;
  return {
    database,
    context,
    at: (instant) => void (clock = Date.parse(instant) - 1000),
    close: async () => {
      await keeper?.close();
      await database.close();
    },
  };
}

/** A photo as the server would state it, without a file behind it. `seed` makes its content hash. */
export async function addPhoto(
  context: Context,
  house: string,
  seed: number,
  readings: Partial<PhotoFacts['readings']> = {},
): Promise<string> {
  const sha256 = seed.toString(16).padStart(64, '0');
  const photo = photoId(house, sha256);
  await context.store.write(house, HARU, async (writing) => {
    if (await writing.photo(photo)) return;
    const payload = {
      photo,
      sha256,
      ...FILE,
      fileName: `${seed}.jpg`,
      readings: someReadings(readings),
    };
    await writing.say({ kind: 'photo.added', version: 2, payload });
  });
  return photo;
}

const FILE = { bytes: 1000, mediaType: 'image/jpeg' as const, width: 400, height: 300 };

/** Every row of every projected table as text, in a fixed order: what two databases are compared by. */
export async function dumpProjection(database: Database): Promise<Record<string, string[]>> {
  const dump: Record<string, string[]> = {};
  for (const table of PROJECTED) {
    const rows = await database.db.selectFrom(table).selectAll().execute();
    dump[table] = rows.map((row) => JSON.stringify(row)).sort();
  }
  return dump;
}

/** The findings as rows, in a fixed order. They are no projection, but must not depend on the way to them. */
export function dumpFindings({ db }: Database) {
  return db.selectFrom('finding').selectAll().orderBy('houseId').orderBy('key').execute();
}

export async function temporaryFolder(): Promise<{ folder: string; remove: () => Promise<void> }> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-test-'));
  return { folder, remove: () => rm(folder, { recursive: true, force: true }) };
}
