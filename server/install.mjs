import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');

/** A reason to stop that a person can act on: shown as a sentence, without a stack. */
export class PlainError extends Error {}

/** Oldest Node.js that every installed package supports (Vite 8 asks for 20.19). */
const OLDEST = [20, 19];

export function assertNode(version = process.versions.node) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1])) return;
  throw new PlainError(`Arakabe needs Node.js ${OLDEST.join('.')} or newer; this is ${version}.`);
}

/** Names of packages that package-lock.json asks for and node_modules lacks or holds in another version. */
export function missingPackages(root = ROOT) {
  const wanted = readPackages(path.join(root, 'package-lock.json'));
  // npm writes this file last, so it says what a finished installation put there.
  const present = readPackages(path.join(root, 'node_modules', '.package-lock.json'));
  return Object.entries(wanted)
    .filter(([folder, entry]) => folder !== '' && !isPresent(root, folder, entry, present[folder]))
    .map(([folder]) => folder.replace(/^node_modules\//, ''));
}

function readPackages(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : {};
}

/** Optional packages are the builds for other platforms: they may be absent. */
function isPresent(root, folder, wanted, present) {
  if (present === undefined) return wanted.optional === true || wanted.devOptional === true;
  return present.version === wanted.version && existsSync(path.join(root, folder));
}

/** Runs `npm ci` when something is missing. Throws PlainError when it cannot. */
export function installMissing(root = ROOT) {
  const missing = missingPackages(root);
  if (missing.length === 0) return;
  console.log(`Installing packages (${missing.length} missing or in another version) …`);
  const npm = spawnSync('npm', ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (npm.error?.code === 'ENOENT')
    throw new PlainError('npm was not found. It comes with Node.js: install it, then try again.');
  if (npm.error) throw new PlainError(`npm could not be started: ${npm.error.message}.`);
  if (npm.signal) throw new PlainError(`npm was stopped by ${npm.signal} before it had finished.`);
  if (npm.status !== 0)
    throw new PlainError(
      'npm could not install the packages; its own words are above. ' +
        'It needs the network once: check the connection, then try again.',
    );
}

/** Runs a main function; a PlainError becomes one sentence and exit code 1. */
export async function runPlainly(main) {
  try {
    await main();
  } catch (error) {
    if (!(error instanceof PlainError)) throw error;
    console.error(error.message);
    process.exitCode = 1;
  }
}
