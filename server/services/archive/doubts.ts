import type { Person } from '#domain/contract/shapes';
import type { StoryEntry } from './archive-material.ts';

/** A word against a record or for it. */
export interface DoubtSaid {
  readonly seq: number;
  readonly at: string;
  readonly by: Person | null;
  readonly what: 'doubted' | 'answered' | 'reopened';
  readonly tag: string;
  readonly mark: string;
  readonly reason: string;
}

/** What was said of doubts about tags, in order; other findings have no tag in their keys. */
export function doubtsIn(story: readonly StoryEntry[]): DoubtSaid[] {
  const marks = new Map(
    story.flatMap(({ kind, payload }) =>
      kind === 'tag.disputed' ? [[payload.tag, payload.mark] as const] : [],
    ),
  );
  return story.flatMap((entry) =>
    tagsDoubted(entry).flatMap(({ tag, what, reason }): DoubtSaid[] => {
      const mark = marks.get(tag);
      return mark === undefined
        ? []
        : [{ seq: entry.seq, at: entry.at, by: entry.by, what, tag, mark, reason }];
    }),
  );
}

function tagsDoubted({ kind, payload }: StoryEntry): Pick<DoubtSaid, 'tag' | 'what' | 'reason'>[] {
  if (kind === 'tag.disputed') return [{ tag: payload.tag, what: 'doubted', reason: payload.reason }];
  if (kind === 'finding.reopened')
    return [{ tag: tagIn(payload.key), what: 'reopened', reason: payload.reason }];
  if (kind !== 'findings.accepted') return [];
  return payload.findings.map(({ key }) => ({ tag: tagIn(key), what: 'answered', reason: payload.reason }));
}

const tagIn = (key: string) => key.replace(/^disputed:/u, '');
