import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { UploadItem } from './upload-queue.ts';

/** A chosen file with what must be known of it after the page is gone. */
export interface KeptFile extends Pick<UploadItem, 'id' | 'house' | 'by'> {
  /** Order of choice. */
  readonly at: number;
  readonly file: File;
}

/** Where chosen files lie until the server has taken or refused them. Every call may fail. */
export interface FileStore {
  readonly put: (kept: KeptFile) => Promise<void>;
  readonly ids: () => Promise<string[]>;
  readonly get: (id: string) => Promise<KeptFile | undefined>;
  readonly remove: (id: string) => Promise<void>;
}

interface Shape extends DBSchema {
  files: { key: string; value: KeptFile };
}

const NAME = 'arakabe.chosen-photos';

/** In the browser's own database, which copies the bytes: the file itself may go meanwhile. */
export function browserFileStore(): FileStore {
  let opened: Promise<IDBPDatabase<Shape>> | null = null;
  const forget = () => {
    opened = null;
  };
  const database = () => {
    opened ??= openDB<Shape>(NAME, 1, {
      upgrade: (db) => void db.createObjectStore('files', { keyPath: 'id' }),
      terminated: forget,
    });
    // What failed once, as in a private window, may do after the next start only; asking again costs little.
    opened.catch(forget);
    return opened;
  };
  return {
    put: async (kept) => void (await (await database()).put('files', kept)),
    ids: async () => (await database()).getAllKeys('files'),
    get: async (id) => (await database()).get('files', id),
    remove: async (id) => (await database()).delete('files', id),
  };
}

/** Asks the browser not to throw away what is kept when its disk grows full. It may say no. */
export async function askToPersist(): Promise<void> {
  try {
    await navigator.storage.persist();
  } catch {
    // Not on plain-http origins and not in every browser.
  }
}
