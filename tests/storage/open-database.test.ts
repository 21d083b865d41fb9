import { mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, it } from 'vitest';
import { EmbeddedDatabaseBroken, openDatabase } from '../../server/storage/open-database.ts';
import { spareInitdb } from '../support/databases.ts';
import { temporaryFolder } from '../support/record.ts';

it('says of a damaged database what comes back without it, and what does not', async () => {
  const { folder, remove } = await temporaryFolder();
  const database = path.join(folder, 'database');
  await spareInitdb(database);
  await mkdir(path.join(database, 'global'), { recursive: true });
  await writeFile(path.join(database, 'PG_VERSION'), 'x');
  await writeFile(path.join(database, 'global', 'pg_control'), 'x');
  const opened = openDatabase({ kind: 'embedded', folder: database });
  await expect(opened).rejects.toThrow(EmbeddedDatabaseBroken);
  await expect(opened).rejects.toThrow(database);
  await expect(opened).rejects.toThrow(/Accounts, passwords, links and access tokens do not: a new link/);
  await expect(opened).rejects.not.toThrow('Nothing is lost');
  expect(await readFile(path.join(database, 'PG_VERSION'), 'utf8')).toBe('x');
  await remove();
});
