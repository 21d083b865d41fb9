import {
  BlobReader,
  ERR_EOCDR_NOT_FOUND,
  ZipReader,
  configure,
  type Entry,
  type FileEntry,
} from '@zip.js/zip.js';
import type { ArchiveFiles } from '#domain/verify/archive-files';
import { wrongZip } from '#domain/verify/wrong-zip';

configure({ useWebWorkers: false, chunkSize: 1024 * 1024 });

/** Opens a ZIP by its list of contents; of the rest only slices are read, when they are asked for. Throws Wrong. */
export async function openZipBlob(blob: Blob): Promise<ArchiveFiles> {
  const entries = (await listEntries(blob)).filter(isFile);
  const byName = new Map(entries.map((entry) => [entry.filename, entry]));
  return {
    files: entries.map(({ filename, uncompressedSize }) => ({ name: filename, bytes: uncompressedSize })),
    read: (name) => contentOf(byName.get(name)),
  };
}

async function listEntries(blob: Blob): Promise<Entry[]> {
  try {
    const zip = new ZipReader(new BlobReader(blob), { strictness: 'strict' });
    return await zip.getEntries({ strictness: 'strict' });
  } catch (error) {
    const { message } = error as Error;
    throw wrongZip(blob.size, message !== ERR_EOCDR_NOT_FOUND, message);
  }
}

const isFile = (entry: Entry): entry is FileEntry => !entry.directory;

async function* contentOf(entry: FileEntry | undefined): AsyncGenerator<Uint8Array> {
  if (!entry) throw new Error('there is no such file');
  const { readable, writable } = new TransformStream<Uint8Array, Uint8Array>();
  const writing = entry.getData(writable);
  // Its failure is that of the reading, which is awaited.
  writing.catch(() => undefined);
  yield* piecesOf(readable);
  await writing;
}

/** Safari does not iterate over streams by itself. */
export async function* piecesOf(readable: ReadableStream<Uint8Array>): AsyncGenerator<Uint8Array> {
  const reader = readable.getReader();
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) yield next.value;
  } finally {
    await reader.cancel().catch(() => undefined);
  }
}
