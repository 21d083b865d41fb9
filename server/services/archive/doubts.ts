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
  const marks = new Map<string, string>();
  return story.flatMap((entry): DoubtSaid[] => {
    const { seq, at, by } = entry;
    const about = (what: DoubtSaid['what'], key: string, reason: string): DoubtSaid[] => {
      const tag = key.replace(/^disputed:/u, '');
      const mark = marks.get(tag);
      return mark === undefined ? [] : [{ seq, at, by, what, tag, mark, reason }];
    };
    switch (entry.kind) {
      case 'tag.disputed':
        marks.set(entry.payload.tag, entry.payload.mark);
        return about('doubted', entry.payload.tag, entry.payload.reason);
      case 'findings.accepted': {
        const { findings, reason } = entry.payload;
        return findings
          .filter(({ kind }) => kind === 'disputed')
          .flatMap(({ key }) => about('answered', key, reason));
      }
      case 'finding.reopened':
        return entry.payload.kind === 'disputed'
          ? about('reopened', entry.payload.key, entry.payload.reason)
          : [];
      default:
        return [];
    }
  });
}
