import { createHash, randomUUID } from 'node:crypto';
import { mkdir, open, readdir, rename, rm, stat, statfs, type FileHandle } from 'node:fs/promises';
import path from 'node:path';
import type { Readable } from 'node:stream';
import type { Incoming, PhotoFiles, PictureSize } from '../services/photo-files.ts';
import { fsyncFolder } from './fsync-folder.ts';

/** Incoming files of a process that died are swept after this time, so that a second process is not robbed. */
const STALE_MS = 24 * 60 * 60 * 1000;

const READ_BYTES = 256 * 1024;

/** A network chunk is small, and each write waits for a thread that pictures are made on too. */
const WRITE_BYTES = 1024 * 1024;

/**
 * Original files by content below `<data>/originals`, what is made of them below `<data>/pictures`.
 * An original is never altered and never deleted; its name appears only when all of it is on disk.
 */
export class DiskPhotoFiles implements PhotoFiles {
  constructor(private readonly dataFolder: string) {}

  /** Makes the folders and sweeps what uploads left behind; `alone`: no other process uses the folder. */
  async prepare(alone: boolean, now: Date): Promise<void> {
    for (const folder of ['incoming', 'originals', 'pictures'])
      await mkdir(path.join(this.dataFolder, folder), { recursive: true });
    const incoming = path.join(this.dataFolder, 'incoming');
    for (const name of await readdir(incoming)) {
      const file = path.join(incoming, name);
      const seen = await stat(file).catch(() => undefined);
      if (seen && (alone || now.getTime() - seen.mtimeMs > STALE_MS)) await rm(file, { force: true });
    }
  }

  /** One pass: hash, size, bytes to disk, fsync. Past the limit the rest is read and thrown away. */
  async receive(source: Readable, limit: number): Promise<Incoming> {
    const file = path.join(this.dataFolder, 'incoming', `${randomUUID()}.part`);
    const handle = await open(file, 'wx');
    const hash = createHash('sha256');
    let bytes = 0;
    try {
      let waiting: Buffer[] = [];
      let waitingBytes = 0;
      for await (const chunk of source as AsyncIterable<Buffer>) {
        bytes += chunk.length;
        if (bytes > limit) continue;
        hash.update(chunk);
        waiting.push(chunk);
        waitingBytes += chunk.length;
        if (waitingBytes < WRITE_BYTES) continue;
        await writeAll(handle, waiting);
        waiting = [];
        waitingBytes = 0;
      }
      if (bytes <= limit) {
        await writeAll(handle, waiting);
        await handle.sync();
      }
    } catch (error) {
      await rm(file, { force: true });
      throw error;
    } finally {
      await handle.close();
    }
    return { path: file, bytes, sha256: hash.digest('hex'), tooLarge: bytes > limit };
  }

  async keep(incoming: Incoming): Promise<void> {
    const target = this.original(incoming.sha256);
    await mkdir(path.dirname(target), { recursive: true });
    await rename(incoming.path, target);
    await fsyncFolder(path.dirname(target));
    await fsyncFolder(path.dirname(path.dirname(target)));
  }

  async discard(incoming: Incoming): Promise<void> {
    await rm(incoming.path, { force: true });
  }

  original(sha256: string): string {
    return path.join(this.dataFolder, 'originals', sha256.slice(0, 2), sha256);
  }

  async originalBytes(sha256: string): Promise<number | null> {
    const seen = await stat(this.original(sha256)).catch(() => null);
    return seen?.isFile() ? seen.size : null;
  }

  async *readOriginal(sha256: string): AsyncGenerator<Uint8Array> {
    const handle = await open(this.original(sha256));
    try {
      for (;;) {
        const { bytesRead, buffer } = await handle.read(new Uint8Array(READ_BYTES), 0, READ_BYTES);
        if (bytesRead === 0) return;
        yield buffer.subarray(0, bytesRead);
      }
    } finally {
      await handle.close();
    }
  }

  picture(sha256: string, size: PictureSize): string {
    return path.join(this.dataFolder, 'pictures', sha256.slice(0, 2), `${sha256}.${size}.jpg`);
  }

  async prepareForPictures(sha256: string): Promise<void> {
    await mkdir(path.dirname(this.picture(sha256, 'thumb')), { recursive: true });
  }

  async freeBytes(): Promise<number> {
    const { bavail, bsize } = await statfs(this.dataFolder);
    return bavail * bsize;
  }
}

async function writeAll(handle: FileHandle, chunks: readonly Buffer[]): Promise<void> {
  if (chunks.length > 0) await handle.appendFile(Buffer.concat(chunks));
}
