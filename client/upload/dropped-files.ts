/** All files of a drop, folders opened. Must be called within the event: the list is emptied afterwards. */
export async function droppedFiles(transfer: DataTransfer): Promise<File[]> {
  const entries = [...transfer.items].map((item) => item.webkitGetAsEntry());
  const plain = [...transfer.files];
  if (entries.every((entry) => entry === null || entry.isFile)) return plain;
  const found = await Promise.all(entries.filter((entry) => entry !== null).map(filesBelow));
  return found.flat().filter((file) => !file.name.startsWith('.'));
}

async function filesBelow(entry: FileSystemEntry): Promise<File[]> {
  if (entry.isFile) {
    return [
      await new Promise<File>((resolve, reject) => (entry as FileSystemFileEntry).file(resolve, reject)),
    ];
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const found: File[] = [];
  // The reader hands out a folder in portions and ends with an empty one.
  for (let portion = await read(reader); portion.length > 0; portion = await read(reader)) {
    for (const below of portion) found.push(...(await filesBelow(below)));
  }
  return found;
}

function read(reader: FileSystemDirectoryReader): Promise<FileSystemEntry[]> {
  return new Promise((resolve, reject) => reader.readEntries(resolve, reject));
}
