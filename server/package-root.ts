import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's folder, whether this runs from its source or from the bundle in dist/. */
export function packageRoot(from = fileURLToPath(import.meta.url)): string {
  let folder = path.dirname(from);
  while (!existsSync(path.join(folder, 'package.json'))) {
    const parent = path.dirname(folder);
    if (parent === folder) throw new Error('No package.json above the program.');
    folder = parent;
  }
  return folder;
}
