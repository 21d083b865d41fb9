import { copyFile, mkdir, readdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { migrate } from '../../server/storage/migrate.ts';
import { openDatabase, type Database } from '../../server/storage/open-database.ts';
import { describeOverBothDatabases, type PlaceForDatabase } from '../support/databases.ts';
import { MIGRATIONS, temporaryFolder } from '../support/record.ts';

const SCHEMA = path.join(import.meta.dirname, '../fixtures/schema.txt');

describeOverBothDatabases('migrations', (make, kind) => {
  let place: PlaceForDatabase;
  let database: Database;
  let folder: string;
  let removeFolder: () => Promise<void>;
  beforeEach(async () => {
    place = await make();
    database = await openDatabase(place.config);
    ({ folder, remove: removeFolder } = await temporaryFolder());
    await mkdir(folder, { recursive: true });
    for (const name of await readdir(MIGRATIONS))
      await copyFile(path.join(MIGRATIONS, name), path.join(folder, name));
  });
  afterEach(async () => {
    await database.close();
    await place.remove();
    await removeFolder();
  });

  it('give exactly the committed schema', async () => {
    await migrate(database.pool, folder);
    const { rows } = await database.pool.query<{ line: string }>(DESCRIBE);
    await expect(`${rows.map((row) => row.line).join('\n')}\n`).toMatchFileSnapshot(SCHEMA);
  });

  it('run once, whatever the number of starters', async () => {
    const starters = kind === 'server' ? 8 : 3;
    const done = await Promise.all(Array.from({ length: starters }, () => migrate(database.pool, folder)));
    expect(done.flat()).toEqual((await readdir(MIGRATIONS)).sort());
  });

  it('refuse a file that was altered after it was applied', async () => {
    await migrate(database.pool, folder);
    const [first] = (await readdir(folder)).sort();
    await writeFile(path.join(folder, first as string), 'select 1;');
    await expect(migrate(database.pool, folder)).rejects.toThrow(/altered after it was applied/);
  });

  it('refuse a database of a newer program', async () => {
    await writeFile(path.join(folder, '9999-future.sql'), 'create table future (id int);');
    await migrate(database.pool, folder);
    await expect(migrate(database.pool, MIGRATIONS)).rejects.toThrow(/newer Arakabe/);
  });

  it('leave nothing of a file that fails, and name no half of it as done', async () => {
    await writeFile(
      path.join(folder, '9998-broken.sql'),
      'create table half (id int); select no_such_function();',
    );
    await expect(migrate(database.pool, folder)).rejects.toThrow();
    const { rows } = await database.pool.query("select to_regclass('half') as half");
    expect(rows).toEqual([{ half: null }]);
    await writeFile(path.join(folder, '9998-broken.sql'), 'create table half (id int);');
    expect(await migrate(database.pool, folder)).toEqual(['9998-broken.sql']);
  });
});

/** Columns, then constraints and indexes, of the public schema: the same text on both databases. */
const DESCRIBE = `
  select line collate "C" as line from (
  select format('%s.%s %s%s%s', c.table_name, c.column_name, c.udt_name,
                coalesce('(' || c.datetime_precision || ')', ''),
                case c.is_nullable when 'NO' then ' not null' else '' end) as line
  from information_schema.columns c where c.table_schema = 'public' and c.table_name <> 'migration'
  union all
  select format('%s: %s', conrelid::regclass, pg_get_constraintdef(oid))
  from pg_constraint where connamespace = 'public'::regnamespace and contype <> 'n' and conrelid::regclass::text <> 'migration'
  union all
  select indexdef from pg_indexes where schemaname = 'public' and tablename <> 'migration'
  ) as described order by 1`;
