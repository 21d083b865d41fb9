import { STAGES, type Stage } from '#domain/frame/stage';
import { BLANK, type Entry } from './desk-state.ts';
import type { KeyValueStorage } from '../../outbox/browser-storage.ts';
import { proposeMark } from './next-mark.ts';

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

export function freshEntry(last: LastSaid | null, isKnown: (mark: string) => boolean): Entry {
  return last ? { mark: proposeMark(last.mark, isKnown), stage: last.stage, note: '' } : BLANK;
}
