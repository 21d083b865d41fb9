import type { FileStore, KeptFile } from './file-store.ts';

/** The files of this window's queue, and their copies in the browser's store. */
export interface FileShelf {
  /** Copies it to the store in its turn; sending need not wait for that. */
  readonly keep: (chosen: KeptFile) => void;
  readonly file: (id: string) => File | undefined;
  /** No longer needed anywhere. Resolves once the store has let go of it. */
  readonly drop: (id: string) => Promise<void>;
  readonly forget: (id: string) => void;
  /** Another window has sent it or left it out: it was in the store and is there no more. */
  readonly isGone: (id: string) => Promise<boolean>;
  /** Takes over what the store holds and this window does not know, in order of choice. */
  readonly takeUp: () => Promise<KeptFile[]>;
}

export function createFileShelf(store: FileStore, onKept: (id: string) => void): FileShelf {
  const files = new Map<string, File>();
  /** Chosen and not yet in the store, in order. */
  const unkept = new Map<string, KeptFile>();
  const dropped = new Set<string>();
  /** What the store refused for another reason than its size. */
  const hopeless = new Set<string>();
  let isKeeping = false;

  const keepOne = async (chosen: KeptFile) => {
    await store.put(chosen);
    if (unkept.delete(chosen.id)) onKept(chosen.id);
    else await store.remove(chosen.id);
  };
  /** One after the other, so that the first are safe soon. A full store is asked again when room is made. */
  const keepAll = async () => {
    if (isKeeping) return;
    isKeeping = true;
    const next = () => [...unkept.values()].find(({ id }) => !hopeless.has(id));
    let isFull = false;
    for (let chosen = next(); chosen && !isFull; chosen = next()) {
      const { id } = chosen;
      await keepOne(chosen).catch((error: unknown) => {
        isFull = isQuotaError(error);
        if (!isFull) hopeless.add(id);
      });
    }
    isKeeping = false;
  };

  return {
    keep(chosen) {
      files.set(chosen.id, chosen.file);
      unkept.set(chosen.id, chosen);
      void keepAll();
    },
    file: (id) => files.get(id),
    async drop(id) {
      dropped.add(id);
      if (!unkept.delete(id)) await store.remove(id).catch(() => undefined);
      void keepAll();
    },
    forget: (id) => void files.delete(id),
    async isGone(id) {
      if (unkept.has(id) || dropped.has(id)) return false;
      return store.get(id).then(
        (kept) => kept === undefined,
        () => false,
      );
    },
    async takeUp() {
      const ids = await store.ids().catch(() => []);
      const isNew = (id: string) => !files.has(id) && !dropped.has(id);
      const found = await Promise.all(ids.filter(isNew).map((id) => store.get(id).catch(() => undefined)));
      const whole = found.filter((kept) => kept !== undefined && isNew(kept.id)) as KeptFile[];
      for (const { id, file } of whole) files.set(id, file);
      return whole.sort((a, b) => a.at - b.at);
    },
  };
}

function isQuotaError(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'QuotaExceededError';
}
