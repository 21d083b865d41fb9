import { readFile } from 'node:fs/promises';
import { parentPort } from 'node:worker_threads';
import { libheif } from './libheif.ts';
import type { HeicAnswer, HeicRequest } from './heic-messages.ts';

/** Decodes one HEIC file at a time, off the main thread: it takes most of a second and hundreds of megabytes. */
const decoder = new libheif.HeifDecoder();

parentPort?.on('message', (request: HeicRequest) => void answer(request));

async function answer(request: HeicRequest): Promise<void> {
  const result = await decode(request).catch((): HeicAnswer => ({ ok: false }));
  parentPort?.postMessage(result, result.ok ? [result.data] : []);
}

async function decode({ path, maxPixels }: HeicRequest): Promise<HeicAnswer> {
  const images = decoder.decode(await readFile(path));
  try {
    const image = images.find((candidate) => candidate.is_primary()) ?? images[0];
    if (!image) return { ok: false };
    const width = image.get_width();
    const height = image.get_height();
    if (!(width * height >= 1) || width * height > maxPixels) return { ok: false };
    const data = new Uint8ClampedArray(width * height * 4);
    const shown = await new Promise((done) => image.display({ data, width, height }, done));
    return shown ? { ok: true, width, height, data: data.buffer } : { ok: false };
  } finally {
    for (const image of images) image.free();
  }
}
