import { stat } from 'node:fs/promises';
import { openFolder } from './folder-archive.ts';
import { openZip, type OpenArchive } from './zip-archive.ts';

/** Opens an archive of a house, packed or unpacked. Throws Wrong where it is none. */
export async function openArchive(path: string): Promise<OpenArchive> {
  return (await stat(path)).isDirectory() ? openFolder(path) : openZip(path);
}
