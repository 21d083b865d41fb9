import { verifyArchive, type VerifyOptions } from '#domain/verify/verify-archive';
import { hashing } from '../../server/storage/hashing.ts';
import { openArchive } from '../../server/storage/archive/open-archive.ts';
import { readWhole } from '#domain/verify/archive-files';
import type { Files } from './hand-made-archive.ts';

export async function verifyFile(path: string, options: VerifyOptions = {}) {
  const archive = await openArchive(path);
  try {
    return await verifyArchive(archive, hashing, options);
  } finally {
    await archive.close();
  }
}

/** All files of an archive, by name, in memory. */
export async function readFiles(path: string): Promise<Files> {
  const archive = await openArchive(path);
  try {
    const files: Files = new Map();
    for (const { name } of archive.files)
      files.set(name, Uint8Array.from(await readWhole(archive.read(name))));
    return files;
  } finally {
    await archive.close();
  }
}
