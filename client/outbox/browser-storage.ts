export interface KeyValueStorage {
  readonly length: number;
  key(index: number): string | null;
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

/** The browser's storage, or null where it is forbidden: reading the property itself can throw. */
export function browserStorage(which: 'localStorage' | 'sessionStorage'): KeyValueStorage | null {
  try {
    return window[which];
  } catch {
    return null;
  }
}
