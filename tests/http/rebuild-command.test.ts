import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { ROOT } from '../support/project-files.ts';
import { temporaryFolder } from '../support/record.ts';
import { smallestHouse } from '../support/sample-house.ts';
import { startServer } from '../support/server.ts';

it('says that there is no house, or which tables were made anew', { timeout: 180_000 }, async () => {
  const { folder, remove } = await temporaryFolder();
  const place = {
    config: { kind: 'embedded', folder: path.join(folder, 'database') } as const,
    remove,
  };
  const rebuild = async () => {
    const env = { PATH: process.env['PATH'], HOME: process.env['HOME'], ARAKABE_DATA: folder };
    const args = [path.join(ROOT, 'dist', 'server', 'rebuild.js')];
    const said = await promisify(execFile)(process.execPath, args, {
      cwd: ROOT,
      env: { ...env, ARAKABE_LOG: 'silent' },
    });
    return said.stdout;
  };
  const server = await startServer(place, { dataFolder: folder });
  await server.close();
  expect(await rebuild()).toBe('There is no house here whose tables could be made anew.\n');
  const again = await startServer(place, { dataFolder: folder });
  const { id } = await smallestHouse(again.owner);
  await again.close();
  expect(await rebuild()).toMatch(new RegExp(`^House ${id}: \\d+ entries applied again\\.\\n$`));
  await remove();
});
