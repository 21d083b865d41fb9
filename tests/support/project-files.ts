import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { packageRoot } from '../../server/package-root.ts';

export const ROOT = packageRoot();
const NOT_OURS = new Set(['node_modules', '.git', 'dist', 'data', 'test-results']);

/** Every file of the project that is not made by a tool, relative to its root, with forward slashes. */
export async function projectFiles(folder = ''): Promise<string[]> {
  const entries = await readdir(path.join(ROOT, folder), { withFileTypes: true });
  const nested = entries
    .filter((entry) => !(folder === '' && NOT_OURS.has(entry.name)))
    .map(async (entry) => {
      const file = path.posix.join(folder, entry.name);
      return entry.isDirectory() ? projectFiles(file) : [file];
    });
  return (await Promise.all(nested)).flat().sort();
}
