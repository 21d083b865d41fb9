import { randomUUID } from 'node:crypto';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/** A reader sees the whole file or none. No fsync: a derivative can always be made again. */
export async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  const temporary = `${path}.${randomUUID()}.part`;
  await mkdir(dirname(path), { recursive: true });
  try {
    await writeFile(temporary, bytes);
    await rename(temporary, path);
  } catch (error) {
    await rm(temporary, { force: true });
    throw error;
  }
}
