import type { KeyValueStorage } from '../../client/outbox/browser-storage.ts';

/** As a browser's Storage, in memory. */
export function memoryStorage(): KeyValueStorage {
  const values = new Map<string, string>();
  return {
    get length() {
      return values.size;
    },
    key: (i) => [...values.keys()][i] ?? null,
    getItem: (key) => values.get(key) ?? null,
    setItem: (key, value) => void values.set(key, value),
    removeItem: (key) => void values.delete(key),
  };
}
