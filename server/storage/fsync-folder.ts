import { open } from 'node:fs/promises';

/** Makes a rename or a new name in the folder survive a power cut. */
export async function fsyncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
