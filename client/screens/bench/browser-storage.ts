import type { KeyValueStorage } from './draft-storage.ts';

/** The browser's storage, or null where it is forbidden: reading the property itself can throw. */
export function browserStorage(which: 'localStorage' | 'sessionStorage'): KeyValueStorage | null {
  try {
    return window[which];
  } catch {
    return null;
  }
}
