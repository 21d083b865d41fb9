import { STAGES, type Stage } from '#domain/frame/stage';
import { browserStorage, type KeyValueStorage } from '../../outbox/browser-storage.ts';

import type { DeskStore } from './desk-store.ts';

/** The last tag that was placed in a house: the next one is often its neighbour at the same stage. */
export interface LastSaid {
  readonly mark: string;
  readonly stage: Stage;
}

const PREFIX = 'arakabe.last.';

export function keepLastSaid(
  storage: KeyValueStorage | null,
  house: string,
  { mark, stage }: LastSaid,
): void {
  try {
    storage?.setItem(PREFIX + house, `${stage} ${mark}`);
  } catch {
    return;
  }
}

export function readLastSaid(storage: KeyValueStorage | null, house: string): LastSaid | null {
  const [name, ...mark] = (storage?.getItem(PREFIX + house) ?? '').split(' ');
  const stage = STAGES.find((s) => s === name);
  return stage && mark.length > 0 ? { mark: mark.join(' '), stage } : null;
}

/** Writes the words of the last tag to what is drawn now. */
export function sayAsLast(store: DeskStore, house: string): void {
  const last = readLastSaid(browserStorage('sessionStorage'), house);
  if (last) store.tell({ type: 'write', entry: last });
}
