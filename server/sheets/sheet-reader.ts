import { Worker } from 'node:worker_threads';
import type { Sheet, SheetReader } from '../services/read-sheet.ts';
import type { SheetRequest } from './sheet-messages.ts';

export interface SheetReaderSettings {
  /** The built sheet-worker. */
  readonly worker: string;
  readonly limitMs?: number;
  readonly memoryMb?: number;
}

/**
 * Reads sheets one after the other, each in a thread of its own: a file of a few kB can be made so that it takes
 * minutes or gigabytes to read. Whoever sent it is told so; nobody else waits for it.
 */
export function sheetReader({ worker, limitMs = 30_000, memoryMb = 768 }: SheetReaderSettings): SheetReader {
  let queue: Promise<unknown> = Promise.resolve();
  return {
    read: (bytes, contentType) => {
      const result = queue.then(() => readInThread(worker, { bytes, contentType }, { limitMs, memoryMb }));
      queue = result.catch(() => undefined);
      return result;
    },
  };
}

function readInThread(
  file: string,
  workerData: SheetRequest,
  { limitMs, memoryMb }: { limitMs: number; memoryMb: number },
): Promise<Sheet> {
  const worker = new Worker(file, { workerData, resourceLimits: { maxOldGenerationSizeMb: memoryMb } });
  return new Promise<Sheet>((resolve, reject) => {
    const giveUp = () => resolve({ ok: false, code: 'schedule-unreadable', params: { reason: 'too-much' } });
    const timer = setTimeout(giveUp, limitMs);
    worker.once('message', resolve);
    worker.once('error', (error: NodeJS.ErrnoException) =>
      error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? giveUp() : reject(error),
    );
    worker.once('exit', () => clearTimeout(timer));
  }).finally(() => worker.terminate());
}
