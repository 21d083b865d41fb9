import { useDeferredValue, useEffect, useMemo } from 'react';
import type { TagView } from '#domain/contract/views';
import type { MemberIndex } from '../../finding/member-index.ts';
import { seenMarks } from '../../finding/picture/seen-marks.ts';
import type { Space } from '../../finding/use-space.ts';
import { browserStorage } from '../../outbox/browser-storage.ts';
import type { Draft } from './bench-model.ts';
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
  /** Where members lie; null without a grid. */
  readonly space: Space | null;
  readonly draft: Draft | null;
  /** Height by width of the picture. */
  readonly tallness: number;
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
      seen: NOTHING_SEEN,
    }),
    [mark, tags, around],
  );
  const seen = useSeen(parts);
  const suggestions = useMemo(
    () => suggestMarks({ ...surroundings, seen }, index),
    [surroundings, seen, index],
  );
  // Before anything is drawn the photo cannot speak for or against it.
  const leading = useMemo(() => leadingMark(suggestMarks(surroundings, index)), [surroundings, index]);
  useEffect(() => {
    store.tell({ type: 'begin-with', fresh: { mark: leading, stage, note: '' } });
  }, [store, leading, stage]);
  const freshAfter = (said: LastSaid): Entry => {
    const now = { ...surroundings, last: said.mark, here: [...surroundings.here, said.mark] };
    return { mark: leadingMark(suggestMarks(now, index)), stage: said.stage, note: '' };
  };
  return { suggestions, freshAfter };
}

const NOTHING_SEEN: readonly string[] = [];

/** What the drawing shows by the tags around it; behind the hand that draws, which must not wait for it. */
function useSeen({ index, tags, space, draft, tallness }: SuggestionParts): readonly string[] {
  const region = useDeferredValue(draft?.region ?? null);
  const replaces = useDeferredValue(draft?.replaces ?? null);
  const isDrawn = region !== null;
  const seenIn = useMemo(() => {
    if (!isDrawn || !space) return null;
    const others = standing(tags).filter(({ id }) => id !== replaces);
    return seenMarks(others, space, index, tallness);
  }, [isDrawn, tags, replaces, space, index, tallness]);
  return useMemo(() => (region && seenIn ? seenIn(region) : NOTHING_SEEN), [region, seenIn]);
}

const marksOf = (tags: readonly TagView[]) => standing(tags).map(({ mark }) => mark);

/** In the order in which they were said. */
function standing(tags: readonly TagView[]): TagView[] {
  return tags.filter(({ state }) => state === 'standing').sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
}
