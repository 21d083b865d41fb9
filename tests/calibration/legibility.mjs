import { rm } from 'node:fs/promises';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/** Tries the limits of legibility anew and writes figures, plot and crops beside this file. */
const here = import.meta.dirname;
const bundle = path.join(here, '..', '..', 'dist', 'calibration.mjs');
await build({
  entryPoints: [path.join(here, 'figures.ts')],
  outfile: bundle,
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
});
try {
  const { calibrate } = await import(pathToFileURL(bundle).href);
  await calibrate(here);
} finally {
  await rm(bundle, { force: true });
}
