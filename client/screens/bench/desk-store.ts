import type { BenchTag } from './bench-tags.ts';
import { BLANK, reduceDesk, type Desk, type DeskEvent, type Entry } from './desk-state.ts';

export interface DeskStore {
  readonly subscribe: (listener: () => void) => () => void;
  readonly get: () => Desk;
  readonly tell: (event: DeskEvent) => void;
  readonly tag: (id: string) => BenchTag | undefined;
  readonly tags: () => readonly BenchTag[];
  readonly knowTags: (tags: readonly BenchTag[]) => void;
}

/** The desk outside of React: a hand on the picture needs the state at once, not after the next drawing. */
export function createDeskStore(start: Desk): DeskStore {
  const listeners = new Set<() => void>();
  let desk = start;
  let tags: ReadonlyMap<string, BenchTag> = new Map();
  const entryOf = (id: string): Entry => {
    const tag = tags.get(id);
    return tag ? { mark: tag.mark, stage: tag.stage, note: tag.note, stretch: tag.stretch ?? 'all' } : BLANK;
  };
  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    get: () => desk,
    tell(event) {
      const next = reduceDesk(desk, event, entryOf);
      if (next === desk) return;
      desk = next;
      for (const listener of listeners) listener();
    },
    tag: (id) => tags.get(id),
    tags: () => [...tags.values()],
    knowTags(now) {
      tags = new Map(now.map((tag) => [tag.id, tag]));
    },
  };
}
