import type { Entry } from './desk-state.ts';

export type Suggested = 'both' | 'mark' | 'stage';

/** What of the words is still as it was proposed after the last tag; null where nothing is, or was. */
export function suggestedIn(entry: Entry, fresh: Entry): Suggested | null {
  const mark = fresh.mark !== '' && entry.mark === fresh.mark;
  const stage = fresh.stage !== null && entry.stage === fresh.stage;
  if (mark && stage) return 'both';
  return mark ? 'mark' : stage ? 'stage' : null;
}
