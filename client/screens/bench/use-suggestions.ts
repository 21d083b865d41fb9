import { useEffect, useMemo } from 'react';
import type { TagView } from '#domain/contract/views';
import type { MemberIndex } from '../../finding/member-index.ts';
import { browserStorage } from '../../outbox/browser-storage.ts';
import type { Entry } from './desk-state.ts';
import type { DeskStore } from './desk-store.ts';
import { readLastSaid, type LastSaid } from './last-said.ts';
import { leadingMark, suggestMarks, type Suggestion, type Surroundings } from './suggest-marks.ts';

/** The tags of the photos before and after the one on the bench. */
export interface AroundPhoto {
  readonly before: readonly TagView[];
  readonly after: readonly TagView[];
}

export interface SuggestionParts {
  readonly house: string;
  readonly index: MemberIndex;
  readonly around: AroundPhoto;
  readonly tags: readonly TagView[];
  readonly store: DeskStore;
}

export interface SuggestionsInUse {
  readonly suggestions: readonly Suggestion[];
  /** What the next drawing begins with once this has been said. */
  readonly freshAfter: (said: LastSaid) => Entry;
}

/** What the next region likely shows; keeps the desk's next words in step with it. */
export function useSuggestions(parts: SuggestionParts): SuggestionsInUse {
  const { house, index, around, tags, store } = parts;
  const last = readLastSaid(browserStorage('sessionStorage'), house);
  const mark = last?.mark ?? null;
  const stage = last?.stage ?? null;
  const surroundings = useMemo<Surroundings>(
    () => ({
      last: mark,
      here: marksOf(tags),
      before: marksOf(around.before),
      after: marksOf(around.after),
    }),
    [mark, tags, around],
  );
  const suggestions = useMemo(() => suggestMarks(surroundings, index), [surroundings, index]);
  const leading = leadingMark(suggestions);
  useEffect(() => {
    store.tell({ type: 'begin-with', fresh: { mark: leading, stage, note: '' } });
  }, [store, leading, stage]);
  const freshAfter = (said: LastSaid): Entry => {
    const now = { ...surroundings, last: said.mark, here: [...surroundings.here, said.mark] };
    return { mark: leadingMark(suggestMarks(now, index)), stage: said.stage, note: '' };
  };
  return { suggestions, freshAfter };
}

/** In the order in which they were said. */
function marksOf(tags: readonly TagView[]): string[] {
  return tags
    .filter(({ state }) => state === 'standing')
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at))
    .map(({ mark }) => mark);
}
