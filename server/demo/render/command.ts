import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { readOrder, type Order } from './read-order.ts';
import { SHOTS } from './shots/shots.ts';
import { takeShot } from './take-shot.ts';

/** `npm run render -- <out folder> [--width 240] [--samples 8] [--threads 1] [--only name]`: photos and their truth. */
async function run({ folder, width, samples, threads, shots }: Order): Promise<void> {
  await mkdir(folder, { recursive: true });
  const size = { width, height: Math.round((width * 3) / 4) };
  const worker = fileURLToPath(new URL('render-worker.js', import.meta.url));
  for (const shot of shots) {
    const started = performance.now();
    const taken = await takeShot(shot, { ...size, samples, detail: 1 }, { count: threads, worker });
    await writeFile(path.join(folder, `${shot.name}.jpg`), taken.jpeg);
    await writeFile(path.join(folder, `${shot.name}.json`), `${JSON.stringify(taken.truth)}\n`);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    process.stdout.write(`${shot.name}: ${size.width} × ${size.height} in ${seconds} s\n`);
  }
}

const order = readOrder(process.argv.slice(2), SHOTS);
if ('problem' in order) {
  process.stderr.write(`${order.problem}\n`);
  process.exitCode = 1;
} else await run(order);
