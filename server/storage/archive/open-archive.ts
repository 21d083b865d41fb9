import { stat } from 'node:fs/promises';
import { openFolder } from './folder-archive.ts';
import { openZip, type OpenArchive } from './zip-archive.ts';

export class NoArchive extends Error {}

/** Opens an archive of a house, packed or unpacked. Throws Wrong where it is none, NoArchive where nothing is there. */
export async function openArchive(path: string): Promise<OpenArchive> {
  const found = await stat(path).catch(() => null);
  if (!found) throw new NoArchive(`There is no file or folder ${path} that can be read.`);
  return found.isDirectory() ? openFolder(path) : openZip(path);
}
