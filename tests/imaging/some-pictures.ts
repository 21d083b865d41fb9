import { mkdtemp, mkdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import sharp, { type Sharp } from 'sharp';
import { afterAll, beforeAll } from 'vitest';
import { createImaging } from '../../server/imaging/imaging.ts';
import type { Imaging } from '../../server/services/ports.ts';
import { ROOT } from '../support/project-files.ts';

/** A folder of its own and an `Imaging` over a freshly bundled HEIC worker, for one test file. */
export function useImaging(): { imaging: () => Imaging; file: (name: string) => string } {
  let folder = '';
  let workerFolder = '';
  let imaging: Imaging;
  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'arakabe-imaging-'));
    workerFolder = await bundleWorker();
    imaging = createImaging({ heicWorker: path.join(workerFolder, 'heic-worker.js') });
  });
  afterAll(async () => {
    await imaging.close();
    await rm(folder, { recursive: true, force: true });
    await rm(workerFolder, { recursive: true, force: true });
  });
  return { imaging: () => imaging, file: (name) => path.join(folder, name) };
}

/** Inside the project, where the bundle finds the packages that stay outside of it. */
async function bundleWorker(): Promise<string> {
  await mkdir(path.join(ROOT, 'dist'), { recursive: true });
  const outdir = await mkdtemp(path.join(ROOT, 'dist', 'test-worker-'));
  await build({
    entryPoints: [path.join(ROOT, 'server', 'imaging', 'heic-worker.ts')],
    outdir,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
  });
  return outdir;
}

/** Left half red, right half blue, lower quarter green: tells every turn and mirroring apart. */
export function sign(width = 400, height = 300): Sharp {
  const half = Math.round(width / 2);
  const quarter = Math.round(height / 4);
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">
    <rect width="${half}" height="${height}" fill="#d02020"/>
    <rect x="${half}" width="${width - half}" height="${height}" fill="#2020d0"/>
    <rect y="${height - quarter}" width="${width}" height="${quarter}" fill="#20a020"/></svg>`;
  return sharp(Buffer.from(svg)).flatten();
}

export async function put(file: string, bytes: Uint8Array): Promise<string> {
  await writeFile(file, bytes);
  return file;
}

/** Mean difference of two pictures a channel, 0 to 255, compared at 32 × 32. */
export async function difference(a: string, b: string): Promise<number> {
  const [x, y] = await Promise.all([tiny(a), tiny(b)]);
  return x.reduce((sum, value, i) => sum + Math.abs(value - (y[i] ?? 0)), 0) / x.length;
}

function tiny(file: string): Promise<Buffer> {
  return sharp(file).resize(32, 32, { fit: 'fill' }).removeAlpha().toColourspace('srgb').raw().toBuffer();
}

/** The colour of one pixel at unit coordinates. */
export async function colourAt(picture: string | Uint8Array, x: number, y: number): Promise<number[]> {
  const { data, info } = await sharp(picture).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const column = Math.min(info.width - 1, Math.floor(x * info.width));
  const row = Math.min(info.height - 1, Math.floor(y * info.height));
  const at = (row * info.width + column) * info.channels;
  return [...data.subarray(at, at + 3)];
}

/** A name for a colour of `sign`, so that a failing test says what it saw. */
export function colourName([red = 0, green = 0, blue = 0]: number[]): string {
  if (red > 150 && green < 90 && blue < 90) return 'red';
  if (blue > 150 && red < 90 && green < 90) return 'blue';
  if (green > 110 && red < 90 && blue < 90) return 'green';
  return `${red},${green},${blue}`;
}
