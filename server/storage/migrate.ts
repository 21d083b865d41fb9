import { createHash } from 'node:crypto';
import { readFile, readdir } from 'node:fs/promises';
import path from 'node:path';
import type pg from 'pg';

/** Any fixed number: all starters of one database wait for each other on it. */
const MIGRATION_LOCK = 4_310_001;

/**
 * Applies the numbered SQL files that the database has not seen, in order, each in a transaction of
 * its own, under a lock. An applied file that was altered since, or a database that is newer than
 * these files, is refused.
 */
export async function migrate(pool: pg.Pool, folder: string): Promise<string[]> {
  const files = (await readdir(folder)).filter((name) => /^\d{4}-.*\.sql$/.test(name)).sort();
  const client = await pool.connect();
  try {
    await client.query('select pg_advisory_lock($1)', [MIGRATION_LOCK]);
    await client.query(
      'create table if not exists migration (name text primary key, sha256 text not null, applied_at timestamptz not null default now())',
    );
    const applied = await readApplied(client);
    assertNothingUnknown(applied, files);
    const done: string[] = [];
    for (const name of files) if (await applyFile(client, folder, name, applied)) done.push(name);
    return done;
  } finally {
    await client.query('select pg_advisory_unlock($1)', [MIGRATION_LOCK]).catch(() => undefined);
    client.release();
  }
}

async function readApplied(client: pg.PoolClient): Promise<Map<string, string>> {
  const { rows } = await client.query<{ name: string; sha256: string }>('select name, sha256 from migration');
  return new Map(rows.map((row) => [row.name, row.sha256]));
}

function assertNothingUnknown(applied: Map<string, string>, files: string[]): void {
  const unknown = [...applied.keys()].filter((name) => !files.includes(name));
  if (unknown.length > 0)
    throw new Error(
      `The database was made by a newer Arakabe (it has ${unknown.join(', ')}). Start that version.`,
    );
}

async function applyFile(
  client: pg.PoolClient,
  folder: string,
  name: string,
  applied: Map<string, string>,
): Promise<boolean> {
  const sql = await readFile(path.join(folder, name), 'utf8');
  const sha256 = createHash('sha256').update(sql).digest('hex');
  const before = applied.get(name);
  if (before === sha256) return false;
  if (before !== undefined)
    throw new Error(
      `The migration ${name} was altered after it was applied. Put the old file back and add a new one.`,
    );
  try {
    await client.query('begin');
    await client.query(sql);
    await client.query('insert into migration (name, sha256) values ($1, $2)', [name, sha256]);
    await client.query('commit');
  } catch (error) {
    await client.query('rollback').catch(() => undefined);
    throw error;
  }
  return true;
}
