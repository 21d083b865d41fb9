import { createReadStream } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import path from 'node:path';
import type { OpenArchive } from './zip-archive.ts';

/** An archive that somebody has unpacked. Links are not followed: what they lead to is no part of it. */
export async function openFolder(folder: string): Promise<OpenArchive> {
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = [];
  for (const entry of found) {
    if (!entry.isFile()) continue;
    const file = path.join(entry.parentPath, entry.name);
    const name = path.relative(folder, file).split(path.sep).join('/');
    files.push({ name, bytes: (await stat(file)).size });
  }
  return {
    files,
    read: (name) => createReadStream(path.join(folder, ...name.split('/'))) as AsyncIterable<Uint8Array>,
    close: () => Promise.resolve(),
  };
}
