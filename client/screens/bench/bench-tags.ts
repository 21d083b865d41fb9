import type { TagView } from '#domain/contract/views';
import type { Mark } from '#domain/frame/mark';
import { parseMark } from '#domain/frame/mark';
import type { Unsent } from '../../outbox/outbox.ts';

/** A tag as the bench shows it: what the server has, with what this browser has said since. */
export interface BenchTag extends TagView {
  /** Which word of it has not reached the server. */
  readonly unsent: 'placing' | 'withdrawing' | null;
}

export interface Speaker {
  readonly id: string;
  readonly name: string;
}

/** Lays the unsent statements over the tags of the server. Refused ones change nothing: they are shown apart. */
export function mergeUnsent(
  tags: readonly TagView[],
  unsent: readonly Unsent[],
  speaker: Speaker,
  isKnown: (mark: string) => boolean,
): BenchTag[] {
  const merged = new Map<string, BenchTag>(tags.map((tag) => [tag.id, { ...tag, unsent: null }]));
  for (const entry of unsent) {
    if (entry.refused === null) apply(merged, entry, speaker, isKnown);
  }
  return [...merged.values()];
}

function apply(
  tags: Map<string, BenchTag>,
  { write, photo, at }: Unsent,
  speaker: Speaker,
  isKnown: (mark: string) => boolean,
): void {
  const when = new Date(at).toISOString();
  if (write.is === 'withdraw') {
    end(
      tags,
      write.tag,
      { state: 'withdrawn', unsent: 'withdrawing' },
      { at: when, by: speaker, reason: write.reason },
    );
    return;
  }
  if (tags.has(write.tag)) return;
  if (write.is === 'supersede')
    end(tags, write.old, { state: 'superseded' }, { at: when, by: speaker, reason: '' });
  const { mark, stage, region, stretch = null, note = '' } = write.facts;
  const normal = normalMark(mark);
  tags.set(write.tag, {
    id: write.tag,
    photo,
    mark: normal,
    known: isKnown(normal),
    stage,
    region,
    stretch,
    note,
    by: speaker,
    at: when,
    supersedes: write.is === 'supersede' ? write.old : null,
    state: 'standing',
    ended: null,
    disputed: null,
    legibility: { verdict: null, reasons: [], acrossPx: null, sharpness: null },
    unsent: 'placing',
  });
}

function end(
  tags: Map<string, BenchTag>,
  id: string,
  state: Pick<BenchTag, 'state'> & Partial<BenchTag>,
  ended: NonNullable<TagView['ended']>,
): void {
  const tag = tags.get(id);
  if (tag?.state === 'standing') tags.set(id, { ...tag, ...state, ended });
}

function normalMark(text: string): Mark {
  const parsed = parseMark(text);
  return parsed.ok ? parsed.mark : (text as Mark);
}
