import { STAGES, type Stage } from '#domain/frame/stage';
import { browserStorage, type KeyValueStorage } from '../../outbox/browser-storage.ts';

import type { TagWrite } from '../../outbox/outbox.ts';
import type { BenchTag } from './bench-tags.ts';
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

/** What was said last once `write` is heard, of what then stands on this photo; null where nothing does. */
export function lastStanding(write: TagWrite, tags: readonly BenchTag[]): LastSaid | null {
  if (write.is !== 'withdraw') return write.facts;
  const standing = tags.filter(({ id, state }) => state === 'standing' && id !== write.tag);
  return standing.sort((a, b) => Date.parse(a.at) - Date.parse(b.at)).at(-1) ?? null;
}

/** Writes the words of the last tag to what is drawn now. */
export function sayAsLast(store: DeskStore, house: string): void {
  const last = readLastSaid(browserStorage('sessionStorage'), house);
  if (last) store.tell({ type: 'write', entry: last });
}
