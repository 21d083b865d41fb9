import path from 'node:path';
import { expect, test } from 'vitest';
import { NoArchive, openArchive } from '../../server/storage/archive/open-archive.ts';
import { temporaryFolder } from '../support/record.ts';

test('a path with nothing at it is told in a sentence that names it', async () => {
  const { folder, remove } = await temporaryFolder();
  const nowhere = path.join(folder, 'nowhere.zip');
  const opened = openArchive(nowhere);
  await expect(opened).rejects.toThrow(NoArchive);
  await expect(opened).rejects.toThrow(`There is no file or folder ${nowhere} that can be read.`);
  await remove();
});
