import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { ROOT } from '../../server/install.mjs';

const IMPORTED = /\bfrom '((?:@[\w.-]+\/)?[\w.-]+)(?:\/[^']*)?'/gu;

/**
 * The packages that people get with the program: what the server depends on, and what is bundled into the pages,
 * which package.json counts among the tools. With all that those bring along.
 */
export function shippedPackages() {
  const manifest = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8'));
  const { packages } = JSON.parse(readFileSync(path.join(ROOT, 'package-lock.json'), 'utf8'));
  const bundled = importedBy('client').filter((name) => name in manifest.devDependencies);
  const found = new Set();
  const open = [...Object.keys(manifest.dependencies), ...bundled].map((name) => `node_modules/${name}`);
  for (let place = open.pop(); place; place = open.pop()) {
    if (found.has(place)) continue;
    found.add(place);
    const { dependencies = {}, optionalDependencies = {} } = packages[place] ?? {};
    for (const name of Object.keys({ ...dependencies, ...optionalDependencies })) {
      const next = placeOf(packages, place, name);
      if (next) open.push(next);
    }
  }
  return new Set([...found].map((place) => place.replace(/^.*node_modules\//u, '')));
}

/** As Node.js looks for it: in the package's own folder, then outward. */
function placeOf(packages, from, name) {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf('/node_modules/')))) {
    const place = folder === '' ? `node_modules/${name}` : `${folder}/node_modules/${name}`;
    if (place in packages) return place;
    if (folder === '') return null;
  }
}

function importedBy(folder) {
  const files = readdirSync(path.join(ROOT, folder), { recursive: true }).filter(
    (name) => /\.tsx?$/u.test(name) && !/vite\.config/u.test(name),
  );
  const names = new Set();
  for (const file of files)
    for (const [, name] of readFileSync(path.join(ROOT, folder, file), 'utf8').matchAll(IMPORTED))
      names.add(name);
  return [...names];
}
