import type { ShownStretch } from '#domain/contract/frame-shapes';
import type { Stage } from '#domain/frame/stage';
import type { BenchState, Draft, Tool } from './bench-model.ts';
import { START, reduceBench, type BenchEvent } from './bench-state.ts';
import type { Begun } from './draft-storage.ts';

/** What is being said about the drawing. */
export interface Entry {
  readonly mark: string;
  readonly stage: Stage | null;
  readonly note: string;
  /** The part that the region shows; without it nobody has said anything, and it is guessed. */
  readonly stretch?: ShownStretch | 'all';
}

/** The drawing together with the words that go with it. */
export interface Desk {
  readonly bench: BenchState;
  readonly entry: Entry;
  /** What a new drawing starts with: the stage of the last tag and the mark that likely follows. */
  readonly fresh: Entry;
  /** The tag whose change was begun when the photo was open before, and left without being saved. */
  readonly left: string | null;
}

export type DeskEvent =
  | BenchEvent
  | { type: 'write'; entry: Partial<Entry> }
  | { type: 'begin-with'; fresh: Entry }
  /** Something that was said once comes back to the desk, to be said better. */
  | { type: 'put-right'; draft: Draft; entry: Entry };

export const BLANK: Entry = { mark: '', stage: null, note: '' };

export interface DeskAtFirst {
  readonly begun: Begun | null;
  readonly fresh: Entry;
  readonly selected: string | null;
  readonly tool: Tool;
}

export function openDesk({ begun, fresh, selected, tool }: DeskAtFirst): Desk {
  const bench = { ...START, tool, selected, ...(begun ? { work: begun.work } : {}) };
  const entry = begun ? entryOfBegun(begun) : fresh;
  return { bench, entry, fresh, left: begun?.work.draft?.replaces ?? null };
}

/** A part of one member is no part of another. */
function written({ stretch, ...entry }: Entry, part: Partial<Entry>): Entry {
  const isOther = part.mark !== undefined && part.mark !== entry.mark;
  return { ...entry, ...(isOther || stretch === undefined ? {} : { stretch }), ...part };
}

function entryOfBegun({ mark, stage, note, stretch }: Begun): Entry {
  return { mark, stage, note, ...(stretch === undefined ? {} : { stretch }) };
}

/** `entryOf` gives the words of a tag whose region begins to be changed. */
export function reduceDesk(desk: Desk, event: DeskEvent, entryOf: (tag: string) => Entry): Desk {
  if (event.type === 'write') return { ...desk, entry: written(desk.entry, event.entry) };
  if (event.type === 'begin-with') return { ...desk, fresh: event.fresh };
  if (event.type === 'put-right') {
    const { draft, entry } = event;
    return { ...desk, bench: reduceBench(desk.bench, { type: 'take-up', draft }), entry, left: null };
  }
  const bench = reduceBench(desk.bench, event);
  if (bench === desk.bench) return desk;
  // What waited after the placed drawing is a new one, as was perhaps that one.
  if (event.type === 'placed') return { ...desk, bench, entry: desk.fresh, left: null };
  const now = subject(bench);
  if (now === subject(desk.bench)) return { ...desk, bench };
  const entry = now === NEW ? desk.fresh : now === NOBODY ? desk.entry : entryOf(now);
  return { ...desk, bench, entry, left: null };
}

const NEW = 'new';
const NOBODY = '';

/** Whom the words are about: the tag that is changed, something new, or nothing yet. */
function subject({ work }: BenchState): string {
  if (!work.draft) return NOBODY;
  return work.draft.replaces ?? NEW;
}
