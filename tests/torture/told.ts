import type { LedgerEntryView } from '#domain/contract/views';

type Said = Record<string, unknown>;

/** What the screens must show, told from the ledger by a second, simpler hand than the server's projection. */
export interface Told {
  readonly photos: Map<string, Said>;
  readonly tags: Map<string, Said>;
  readonly coverings: Map<string, Said>;
  /** By day: these tests have one author a day. */
  readonly notes: Map<string, string>;
}

export function tell(entries: readonly LedgerEntryView[]): Told {
  const told: Told = { photos: new Map(), tags: new Map(), coverings: new Map(), notes: new Map() };
  for (const entry of entries) tellOne(told, entry.kind, entry.payload as Said);
  return told;
}

function tellOne({ photos, tags, coverings, notes }: Told, kind: string, payload: Said): void {
  const { tag, photo, covering, ...facts } = payload as Record<'tag' | 'photo' | 'covering', string> & Said;
  switch (kind) {
    case 'photo.added':
      photos.set(photo, pick(facts, ['sha256', 'bytes', 'fileName', 'mediaType', 'width', 'height']));
      return;
    case 'tag.placed':
      tags.set(tag, { id: tag, photo, ...facts, supersedes: null, state: 'standing' });
      return;
    case 'tag.superseded': {
      const { was: _, ...rest } = facts;
      end(tags, rest['supersedes'] as string, 'superseded');
      tags.set(tag, { id: tag, photo, ...rest, state: 'standing' });
      return;
    }
    case 'tag.withdrawn':
      end(tags, tag, 'withdrawn');
      return;
    case 'covering.planned':
      coverings.set(covering, { id: covering, ...facts, closed: null });
      return;
    case 'covering.closed': {
      const closed = { at: facts['closedAt'], note: facts['note'] };
      coverings.set(covering, { ...coverings.get(covering), closed });
      return;
    }
    case 'note.written':
      notes.set(facts['day'] as string, facts['text'] as string);
  }
}

function end(tags: Map<string, Said>, id: string, state: string): void {
  const tag = tags.get(id);
  if (tag?.['state'] === 'standing') tags.set(id, { ...tag, state });
}

function pick(facts: Said, names: readonly string[]): Said {
  return Object.fromEntries(names.map((name) => [name, facts[name]]));
}
