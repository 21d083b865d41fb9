import { access, mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { PHOTO_FACTS, type PhotoFacts } from './facts/photo-facts.ts';
import { reducedCopy } from './facts/reduced-copy.ts';
import { writeFacts } from './facts/write-facts.ts';
import { readOrder, type Order } from './read-order.ts';
import type { Shot } from './shots/shot.ts';
import { SHOTS } from './shots/shots.ts';
import { takeShot } from './take-shot.ts';
import { truthText } from './truth/truth-file.ts';

/** Of the raising, as the files have it; whoever uses them may write another. */
const FIRST_DAY = '2026-04-01';

/** `npm run render -- <out folder> [--width 240] [--samples 8] [--threads 1] [--only name,name]`: photos and truth. */
async function run(order: Order): Promise<void> {
  await mkdir(order.folder, { recursive: true });
  for (const shot of order.shots) {
    // What lies there already was rendered in another night.
    if (!(await exists(path.join(order.folder, `${shot.name}.json`)))) await renderShot(shot, order);
    await writeCopies(shot, order);
  }
}

async function renderShot(shot: Shot, { folder, width, samples, threads }: Order): Promise<void> {
  const started = performance.now();
  const size = { width, height: Math.round((width * 3) / 4) };
  const worker = fileURLToPath(new URL('render-worker.js', import.meta.url));
  const taken = await takeShot(shot, { ...size, samples, detail: 1 }, { count: threads, worker });
  for (const facts of PHOTO_FACTS.filter(({ name }) => name === shot.name))
    await writePhoto(folder, taken.jpeg, facts);
  await writeFile(path.join(folder, `${shot.name}.json`), truthText(taken.truth, shot.day));
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  process.stdout.write(`${shot.name}: ${size.width} × ${size.height} in ${seconds} s\n`);
}

async function writeCopies(shot: Shot, { folder }: Order): Promise<void> {
  for (const facts of PHOTO_FACTS.filter((photo) => photo.shot === shot.name && photo.name !== shot.name))
    await writePhoto(folder, await reducedCopy(await readFile(path.join(folder, `${shot.name}.jpg`))), facts);
}

async function writePhoto(folder: string, jpeg: Uint8Array, facts: PhotoFacts): Promise<void> {
  await writeFile(path.join(folder, `${facts.name}.jpg`), await writeFacts(jpeg, facts, FIRST_DAY));
}

function exists(file: string): Promise<boolean> {
  return access(file).then(
    () => true,
    () => false,
  );
}

const order = readOrder(process.argv.slice(2), SHOTS);
if ('problem' in order) {
  process.stderr.write(`${order.problem}\n`);
  process.exitCode = 1;
} else await run(order);
