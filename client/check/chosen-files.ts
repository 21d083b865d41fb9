import type { ArchiveFiles } from '#domain/verify/archive-files';
import { openZipBlob, piecesOf } from './zip-blob.ts';

/** What a person has chosen or dropped: a ZIP, or the files of a folder by their paths in it. */
export type Chosen = { readonly zip: File } | { readonly folder: ReadonlyMap<string, File> };

export async function openChosen(chosen: Chosen): Promise<ArchiveFiles> {
  if ('zip' in chosen) return openZipBlob(chosen.zip);
  const { folder } = chosen;
  return {
    files: [...folder].map(([name, { size }]) => ({ name, bytes: size })),
    read: (name) => piecesOf((folder.get(name) ?? new Blob()).stream()),
  };
}

/** Of an input for folders: each path begins with the name of the folder itself. */
export function chosenFolder(files: readonly File[]): Chosen {
  return {
    folder: new Map(files.map((file) => [file.webkitRelativePath.split('/').slice(1).join('/'), file])),
  };
}

/** Of a drop: must be called while the event is handled. */
export async function chosenByDrop(items: DataTransferItemList): Promise<Chosen | null> {
  const [entry] = [...items].map((item) => item.webkitGetAsEntry()).filter((found) => found !== null);
  if (!entry) return null;
  if (isFile(entry)) return { zip: await fileOf(entry) };
  const folder = new Map<string, File>();
  await gather(entry as FileSystemDirectoryEntry, '', folder);
  return { folder };
}

async function gather(from: FileSystemDirectoryEntry, path: string, into: Map<string, File>): Promise<void> {
  const reader = from.createReader();
  // A reader gives a hundred entries at a time, and none when it has no more.
  for (let entries = await next(reader); entries.length > 0; entries = await next(reader))
    for (const entry of entries) {
      if (isFile(entry)) into.set(`${path}${entry.name}`, await fileOf(entry));
      else await gather(entry as FileSystemDirectoryEntry, `${path}${entry.name}/`, into);
    }
}

const isFile = (entry: FileSystemEntry): entry is FileSystemFileEntry => entry.isFile;
const fileOf = (entry: FileSystemFileEntry) =>
  new Promise<File>((resolve, reject) => entry.file(resolve, reject));
const next = (reader: FileSystemDirectoryReader) =>
  new Promise<FileSystemEntry[]>((resolve, reject) => reader.readEntries(resolve, reject));
