import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { PlainError, ROOT, assertNode, installMissing, runPlainly } from './install.mjs';

/** What shows screens to somebody. */
const WITH_SCREENS = ['main', 'demo'];

/** `node server/start.mjs [entry]`: installs and builds what is missing, then runs dist/server/<entry>.js here. */
await runPlainly(async () => {
  const [entry = 'main', ...rest] = process.argv.slice(2);
  assertNode();
  installMissing();
  buildBeforehand(WITH_SCREENS.includes(entry) ? ['server', 'client', 'check'] : ['server']);
  const bundle = path.join(ROOT, 'dist', 'server', `${entry}.js`);
  if (!existsSync(bundle)) throw new PlainError(`There is no server/${entry}.ts to start.`);
  process.argv.splice(1, process.argv.length, bundle, ...rest);
  process.setSourceMapsEnabled(true);
  // In this process, so that signals reach the server and nothing is left behind.
  await import(pathToFileURL(bundle).href);
});

/** In a process of its own: the bundlers' memory and child processes must not stay beside the server for months. */
function buildBeforehand(parts) {
  const { status } = spawnSync(process.execPath, [path.join(ROOT, 'server', 'build.mjs'), ...parts], {
    stdio: 'inherit',
  });
  if (status !== 0) process.exit(status ?? 1);
}
