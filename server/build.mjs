import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { PlainError, ROOT, assertNode, installMissing, runPlainly } from './install.mjs';

/** Bundle name → source. Packages stay outside; #domain is bundled. */
const SERVER_ENTRIES = {
  main: 'server/main.ts',
  rebuild: 'server/rebuild.ts',
  invent: 'server/invent.ts',
  'reset-link': 'server/reset-link.ts',
  verify: 'server/verify.ts',
  restore: 'server/restore.ts',
  demo: 'server/demo.ts',
  render: 'server/demo/render/command.ts',
  'render-worker': 'server/demo/render/light/render-worker.ts',
  'heic-worker': 'server/imaging/heic-worker.ts',
  'sheet-worker': 'server/sheets/sheet-worker.ts',
};
const COMMON_INPUTS = ['package.json', 'package-lock.json', 'tsconfig.json', 'server/build.mjs'];
const DIST = path.join(ROOT, 'dist');

/** Bundles the server into dist/server unless it is fresh. */
export async function buildServer() {
  const [present, absent] = partition(Object.entries(SERVER_ENTRIES), ([, source]) => exists(source));
  for (const [name, source] of absent) console.log(`Not built: ${name}, because ${source} does not exist.`);
  if (present.length === 0) return;
  const outputs = present.map(([name]) => path.join(DIST, 'server', `${name}.js`));
  await unlessFresh('server', hashOf(['server']), outputs, async (folder) => {
    const { build } = await import('esbuild');
    await build({
      absWorkingDir: ROOT,
      entryPoints: Object.fromEntries(present),
      outdir: folder,
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      packages: 'external',
      sourcemap: true,
      logLevel: 'warning',
    });
    replaceFiles(folder, path.join(DIST, 'server'));
  });
}

/** Builds the client into dist/client unless it is fresh. */
export async function buildClient() {
  if (!exists('client/index.html')) {
    console.log('Not built: the client, because client/index.html does not exist.');
    return;
  }
  const outputs = [path.join(DIST, 'client', 'index.html')];
  await unlessFresh('client', hashOf(['client', 'server/domain']), outputs, async (folder) => {
    const { build } = await import('vite');
    await build({
      root: path.join(ROOT, 'client'),
      configFile: path.join(ROOT, 'client', 'vite.config.ts'),
      mode: 'production',
      logLevel: 'warn',
      build: { outDir: folder, emptyOutDir: true },
    });
    compressFiles(path.join(folder, 'assets'));
    rmSync(path.join(DIST, 'client'), { recursive: true, force: true });
    renameSync(folder, path.join(DIST, 'client'));
  });
}

/** Builds the page that lies in every archive, script and style in one file, unless it is fresh. */
export async function buildCheck() {
  const page = path.join(DIST, 'check', 'check.html');
  await unlessFresh('check', hashOf(['client', 'server/domain']), [page], async (folder) => {
    const { build } = await import('esbuild');
    const { outputFiles } = await build({
      absWorkingDir: ROOT,
      entryPoints: { check: 'client/check/main.tsx' },
      outdir: folder,
      bundle: true,
      write: false,
      format: 'iife',
      target: 'es2022',
      jsx: 'automatic',
      minify: true,
      charset: 'utf8',
      legalComments: 'inline',
      logLevel: 'warning',
    });
    const textOf = (ending) => outputFiles.find((file) => file.path.endsWith(ending))?.text ?? '';
    mkdirSync(path.dirname(page), { recursive: true });
    writeFileSync(`${page}.part`, selfContained(textOf('.js'), textOf('.css')));
    renameSync(`${page}.part`, page);
  });
}

/** Its own policy lets it send nothing anywhere. Neither part can end its element before its time. */
function selfContained(script, style) {
  const policy = "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data:";
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta http-equiv="content-security-policy" content="${policy}">
<title>Arakabe</title>
<style>${style.replaceAll('</style', '<\\/style')}</style>
</head>
<body>
<div id="root"></div>
<script>${script.replaceAll('</script', '<\\/script')}</script>
</body>
</html>
`;
}

/** Once here and as small as can be (brotli's default is its best), rather than at every request. */
function compressFiles(folder) {
  for (const name of readdirSync(folder).filter((file) => /\.(js|css)$/.test(file))) {
    const bytes = readFileSync(path.join(folder, name));
    writeFileSync(path.join(folder, `${name}.br`), brotliCompressSync(bytes));
    writeFileSync(path.join(folder, `${name}.gz`), gzipSync(bytes, { level: 9 }));
  }
}

/** Runs `make` into a temporary folder; the stamp is written last, so a broken build is never fresh. */
async function unlessFresh(name, hash, outputs, make) {
  const stamp = path.join(DIST, 'stamps', name);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === hash && outputs.every(existsSync)) return;
  const started = performance.now();
  const folder = path.join(DIST, `making-${name}-${process.pid}`);
  mkdirSync(path.dirname(stamp), { recursive: true });
  rmSync(stamp, { force: true });
  try {
    await make(folder);
  } catch (error) {
    throw new PlainError(`The ${name} could not be built.\n${error.message}`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  writeFileSync(stamp, hash);
  console.log(`Built the ${name} in ${((performance.now() - started) / 1000).toFixed(1)} s.`);
}

/** By content, not by time: a fresh checkout or a touched file changes nothing. */
function hashOf(folders) {
  const hash = createHash('sha256');
  for (const file of [...COMMON_INPUTS, ...folders.flatMap(sourcesBelow)]) {
    const bytes = readFileSync(path.join(ROOT, file));
    hash.update(`${file}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest('hex');
}

function sourcesBelow(folder) {
  return readdirSync(path.join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.endsWith('.sql'))
    .map((entry) => path.relative(ROOT, path.join(entry.parentPath, entry.name)))
    .sort();
}

/** File by file with rename, so that whoever is running from there never sees half a file. */
function replaceFiles(from, to) {
  mkdirSync(to, { recursive: true });
  for (const name of readdirSync(from)) renameSync(path.join(from, name), path.join(to, name));
}

function partition(items, test) {
  return [items.filter(test), items.filter((item) => !test(item))];
}

function exists(file) {
  return existsSync(path.join(ROOT, file));
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  await runPlainly(async () => {
    assertNode();
    installMissing();
    const parts = process.argv.slice(2);
    if (parts.length === 0 || parts.includes('server')) await buildServer();
    if (parts.length === 0 || parts.includes('client')) await buildClient();
    if (parts.length === 0 || parts.includes('check')) await buildCheck();
  });
