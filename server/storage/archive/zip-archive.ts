import { open, type FileHandle } from 'node:fs/promises';
import {
  ERR_EOCDR_NOT_FOUND,
  Reader,
  ZipReader,
  configure,
  type Entry,
  type FileEntry,
} from '@zip.js/zip.js';
import type { ArchiveFiles } from '#domain/verify/archive-files';
import { wrongZip } from '#domain/verify/wrong-zip';

configure({ useWebWorkers: false, chunkSize: 1024 * 1024 });

export interface OpenArchive extends ArchiveFiles {
  close(): Promise<void>;
}

/** Opens a ZIP by its list of contents; the contents are read when they are asked for. Throws Wrong. */
export async function openZip(path: string): Promise<OpenArchive> {
  const handle = await open(path);
  try {
    const zip = new ZipReader(new FileReader(handle), { strictness: 'strict' });
    const { size } = await handle.stat();
    const entries = (await listEntries(zip, size)).filter(isFile);
    const byName = new Map(entries.map((entry) => [entry.filename, entry]));
    return {
      files: entries.map(({ filename, uncompressedSize }) => ({ name: filename, bytes: uncompressedSize })),
      read: (name) => contentOf(byName.get(name)),
      close: () => handle.close(),
    };
  } catch (error) {
    await handle.close();
    throw error;
  }
}

async function listEntries(zip: ZipReader<unknown>, bytes: number): Promise<Entry[]> {
  try {
    return await zip.getEntries({ strictness: 'strict' });
  } catch (error) {
    const { message } = error as Error;
    throw wrongZip(bytes, message !== ERR_EOCDR_NOT_FOUND, message);
  }
}

const isFile = (entry: Entry): entry is FileEntry => !entry.directory;

async function* contentOf(entry: FileEntry | undefined): AsyncGenerator<Uint8Array> {
  if (!entry) throw new Error('there is no such file');
  const { readable, writable } = new TransformStream<Uint8Array, Uint8Array>();
  const writing = entry.getData(writable);
  // Its failure is that of the reading, which is awaited.
  writing.catch(() => undefined);
  const reader = readable.getReader();
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) yield next.value;
  } finally {
    await reader.cancel().catch(() => undefined);
  }
  await writing;
}

class FileReader extends Reader<FileHandle> {
  constructor(private readonly handle: FileHandle) {
    super(handle);
  }

  override async init(): Promise<void> {
    this.size = (await this.handle.stat()).size;
  }

  override async readUint8Array(index: number, length: number): Promise<Uint8Array> {
    const bytes = new Uint8Array(Math.max(0, Math.min(length, this.size - index)));
    let filled = 0;
    while (filled < bytes.length) {
      const { bytesRead } = await this.handle.read(bytes, filled, bytes.length - filled, index + filled);
      if (bytesRead === 0) throw new Error('the file ends too early');
      filled += bytesRead;
    }
    return bytes;
  }
}
