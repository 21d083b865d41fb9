import { existsSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildClient, buildServer } from './build.mjs';
import { PlainError, ROOT, assertNode, installMissing, runPlainly } from './install.mjs';

/** `node server/start.mjs [entry]`: installs and builds what is missing, then runs dist/server/<entry>.js here. */
await runPlainly(async () => {
  const [entry = 'main', ...rest] = process.argv.slice(2);
  assertNode();
  installMissing();
  await buildServer();
  if (entry === 'main') await buildClient();
  const bundle = path.join(ROOT, 'dist', 'server', `${entry}.js`);
  if (!existsSync(bundle)) throw new PlainError(`There is no server/${entry}.ts to start.`);
  process.argv.splice(1, process.argv.length, bundle, ...rest);
  process.setSourceMapsEnabled(true);
  // In this process, so that signals reach the server and nothing is left behind.
  await import(pathToFileURL(bundle).href);
});
