import { isOver, type UploadItem, type UploadQueue } from './upload-queue.ts';

/** Names of chosen files that had not arrived when the page was left, by house. A page cannot keep the files themselves. */
export type UnsentFiles = Readonly<Record<string, readonly string[]>>;

type NameStorage = Pick<Storage, 'getItem' | 'setItem'>;

const STORED = 'arakabe.unsent-photos';

/** Still to be sent: it waits, is on its way, or found no server. */
export function isUnsent(item: UploadItem): boolean {
  return !isOver(item);
}

/** Storage can be forbidden by the browser; then nothing is told after a reload. */
export function readUnsent(storage: () => NameStorage): UnsentFiles {
  try {
    const value: unknown = JSON.parse(storage().getItem(STORED) ?? '{}');
    return isUnsentFiles(value) ? value : {};
  } catch {
    return {};
  }
}

function isUnsentFiles(value: unknown): value is UnsentFiles {
  const isNames = (names: unknown) => Array.isArray(names) && names.every((name) => typeof name === 'string');
  return typeof value === 'object' && value !== null && Object.values(value).every(isNames);
}

export interface Leftovers {
  readonly subscribe: (listener: () => void) => () => void;
  readonly current: () => UnsentFiles;
  /** Call whenever the queue has changed. */
  readonly follow: (queue: UploadQueue) => void;
  readonly forget: (house: string) => void;
}

/** What the page before this one had not sent, less what has been chosen again; kept for the page after this. */
export function createLeftovers(storage: () => NameStorage): Leftovers {
  const listeners = new Set<() => void>();
  let left = readUnsent(storage);
  let queue: UploadQueue = [];
  let stored = '';

  const keep = () => {
    const all: Record<string, string[]> = {};
    for (const [house, names] of Object.entries(left)) (all[house] ??= []).push(...names);
    for (const item of queue.filter(isUnsent)) (all[item.house] ??= []).push(item.fileName);
    const text = JSON.stringify(all);
    if (text === stored) return;
    stored = text;
    try {
      storage().setItem(STORED, text);
    } catch {
      return;
    }
  };
  const leave = (next: UnsentFiles) => {
    left = next;
    keep();
    for (const listener of listeners) listener();
  };

  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    current: () => left,
    follow(next) {
      queue = next;
      const chosen = new Set(queue.map(({ house, fileName }) => `${house}/${fileName}`));
      const rest = Object.entries(left).map(
        ([house, names]) => [house, names.filter((name) => !chosen.has(`${house}/${name}`))] as const,
      );
      const isLess = rest.some(([house, names]) => names.length < (left[house]?.length ?? 0));
      if (isLess) leave(Object.fromEntries(rest));
      else keep();
    },
    forget: (house) => leave(Object.fromEntries(Object.entries(left).filter(([of]) => of !== house))),
  };
}
