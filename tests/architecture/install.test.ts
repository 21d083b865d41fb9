import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { ROOT } from '../support/project-files.ts';

interface Install {
  assertNode: (version: string) => void;
  missingPackages: (root: string) => string[];
}
const { assertNode, missingPackages } = (await import(
  pathToFileURL(path.join(ROOT, 'server', 'install.mjs')).href
)) as Install;

test.each(['20.19.0', '20.20.2', '22.0.0', '24.1.0'])('Node.js %s will do', (version) => {
  expect(() => assertNode(version)).not.toThrow();
});
test.each(['18.20.0', '20.18.3', '9.0.0'])('Node.js %s is refused in a sentence', (version) => {
  expect(() => assertNode(version)).toThrow(`Arakabe needs Node.js 20.19 or newer; this is ${version}.`);
});

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'arakabe-install-'));
  await writeLock('package-lock.json', {
    '': {},
    'node_modules/a': { version: '1.0.0' },
    'node_modules/a/node_modules/b': { version: '2.0.0' },
    'node_modules/other-platform': { version: '1.0.0', optional: true },
  });
});
afterEach(() => rm(folder, { recursive: true, force: true }));

async function writeLock(file: string, packages: Record<string, object>): Promise<void> {
  await mkdir(path.dirname(path.join(folder, file)), { recursive: true });
  await writeFile(path.join(folder, file), JSON.stringify({ packages }));
}

async function installed(packages: Record<string, string>): Promise<void> {
  for (const name of Object.keys(packages)) await mkdir(path.join(folder, name), { recursive: true });
  const entries = Object.entries(packages).map(([name, version]) => [name, { version }]);
  await writeLock('node_modules/.package-lock.json', Object.fromEntries(entries) as Record<string, object>);
}

test('on a fresh clone everything but the optional is missing', () => {
  expect(missingPackages(folder)).toEqual(['a', 'a/node_modules/b']);
});
test('nothing is missing when every version is the one asked for', async () => {
  await installed({ 'node_modules/a': '1.0.0', 'node_modules/a/node_modules/b': '2.0.0' });
  expect(missingPackages(folder)).toEqual([]);
});
test('another version and a deleted folder are missing', async () => {
  await installed({ 'node_modules/a': '1.0.1', 'node_modules/a/node_modules/b': '2.0.0' });
  await rm(path.join(folder, 'node_modules/a/node_modules/b'), { recursive: true });
  expect(missingPackages(folder)).toEqual(['a', 'a/node_modules/b']);
});
