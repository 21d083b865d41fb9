import { Worker } from 'node:worker_threads';
import type { HeicAnswer, HeicRequest } from './heic-messages.ts';
import { MAX_PIXELS } from './limits.ts';

/** The upright pixels of a HEIC file, RGBA. */
export interface HeicPixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

const LIMIT_MS = 60_000;
/** The worker's memory never shrinks, so it ends when nobody has asked for a while. */
const IDLE_MS = 20_000;
/** Kept for the crops that follow one another on one photo. */
const KEEP_MAX_BYTES = 128 * 1024 * 1024;

/** One worker, one file at a time; a worker that dies or takes too long is replaced for the next file. */
export class HeicDecoder {
  private readonly file: string;
  private worker: Worker | null = null;
  private queue: Promise<unknown> = Promise.resolve();
  private last: { path: string; pixels: HeicPixels } | null = null;
  private idle: NodeJS.Timeout | null = null;
  private closed = false;

  constructor(workerFile: string) {
    this.file = workerFile;
  }

  /** Null where the file cannot be decoded. Never rejects for bad content. */
  decode(path: string): Promise<HeicPixels | null> {
    const result = this.queue.then(() => this.next(path));
    this.queue = result.catch(() => undefined);
    return result;
  }

  async close(): Promise<void> {
    this.closed = true;
    await this.release();
  }

  private async next(path: string): Promise<HeicPixels | null> {
    if (this.closed) return null;
    if (this.idle) clearTimeout(this.idle);
    const pixels = this.last?.path === path ? this.last.pixels : await this.ask(path);
    this.last = pixels && pixels.data.byteLength <= KEEP_MAX_BYTES ? { path, pixels } : null;
    if (!this.closed) this.idle = setTimeout(() => void this.release(), IDLE_MS).unref();
    return pixels;
  }

  private async ask(path: string): Promise<HeicPixels | null> {
    const worker = this.worker ?? this.start();
    const answer = await answerOf(worker, { path, maxPixels: MAX_PIXELS });
    if (answer === 'lost') await this.release();
    if (answer === 'lost' || !answer.ok) return null;
    return { width: answer.width, height: answer.height, data: new Uint8Array(answer.data) };
  }

  private start(): Worker {
    // libheif prints its errors; they are answered as `ok: false` instead.
    const worker = new Worker(this.file, { stdout: true, stderr: true });
    worker.stdout.resume();
    worker.stderr.resume();
    worker.on('error', () => undefined);
    worker.unref();
    this.worker = worker;
    return worker;
  }

  private async release(): Promise<void> {
    if (this.idle) clearTimeout(this.idle);
    const worker = this.worker;
    this.worker = null;
    this.last = null;
    await worker?.terminate();
  }
}

function answerOf(worker: Worker, request: HeicRequest): Promise<HeicAnswer | 'lost'> {
  return new Promise((resolve) => {
    const lost = () => finish('lost');
    // Keeps the process alive while somebody waits, which the worker itself does not.
    const timer = setTimeout(lost, LIMIT_MS);
    const finish = (answer: HeicAnswer | 'lost') => {
      clearTimeout(timer);
      worker.off('message', finish).off('exit', lost).off('error', lost);
      resolve(answer);
    };
    worker.once('message', finish).once('exit', lost).once('error', lost);
    worker.postMessage(request);
  });
}
