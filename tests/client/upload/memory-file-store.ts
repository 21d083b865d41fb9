import type { FileStore, KeptFile } from '../../../client/upload/file-store.ts';

export interface MemoryFileStore extends FileStore {
  put: FileStore['put'];
  readonly held: () => string[];
  /** The room it has, in files. */
  room: number;
}

/** As the browser's, in memory; several windows may share it. */
export function memoryFileStore(room = Infinity): MemoryFileStore {
  const files = new Map<string, KeptFile>();
  const store: MemoryFileStore = {
    room,
    held: () => [...files.values()].map(({ file }) => file.name),
    put: async (kept) => {
      await Promise.resolve();
      if (files.size >= store.room) throw new DOMException('full', 'QuotaExceededError');
      files.set(kept.id, kept);
    },
    ids: async () => [...files.keys()],
    get: async (id) => files.get(id),
    remove: async (id) => void files.delete(id),
  };
  return store;
}

/** Locks that all windows of one browser share. */
export function memoryLocks(): <T>(name: string, work: () => Promise<T>) => Promise<T> {
  const tails = new Map<string, Promise<unknown>>();
  return (name, work) => {
    const mine = (tails.get(name) ?? Promise.resolve()).then(work);
    tails.set(
      name,
      mine.catch(() => undefined),
    );
    return mine;
  };
}
