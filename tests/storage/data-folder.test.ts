import { expect, it } from 'vitest';
import { DataFolderUnusable, inDataFolder } from '../../server/storage/data-folder.ts';

const failing = (code: string) => () => Promise.reject(Object.assign(new Error(`${code}: raw`), { code }));

it('names the folder that cannot be written', async () => {
  for (const code of ['EACCES', 'EPERM', 'EROFS']) {
    const started = inDataFolder('/srv/record', failing(code));
    await expect(started).rejects.toThrow(DataFolderUnusable);
    await expect(started).rejects.toThrow(/^The data folder \/srv\/record cannot be written\./);
  }
});

it('leaves alone what works, and what the folder is not to blame for', async () => {
  expect(await inDataFolder('/srv/record', () => Promise.resolve(7))).toBe(7);
  await expect(inDataFolder('/srv/record', failing('ENOSPC'))).rejects.toThrow('ENOSPC: raw');
});
