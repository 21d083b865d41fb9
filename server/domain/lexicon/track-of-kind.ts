import type { Track } from '../frame/stage.ts';
import { foldTerm } from './fold-term.ts';
import type { Kind } from './kinds.ts';
import { BUILT_IN, type Lexicon } from './lexicon.ts';
import { kindIn } from './make-lexicon.ts';

export { foldTerm };

export interface InferredTrack {
  readonly track: Track;
  readonly source: 'stated' | 'kind' | 'unknown-kind';
}

/**
 * The track of a kind that the lexicon does not know. 'wall' is the only track with all five stages,
 * so nobody is kept from saying what a photo shows; its price is a tally that may never fill up.
 */
export const TRACK_OF_UNKNOWN_KIND: Track = 'wall';

/** The lexicon's entry for exactly this word, or undefined; near misses are not guessed. */
export function findKind(term: string, lexicon: Lexicon = BUILT_IN): Kind | undefined {
  return kindIn(lexicon, term);
}

/** The stages that a member passes, with how that is known: stated, by its kind, or assumed. */
export function inferTrack(
  statedTrack: Track | null,
  kind: string,
  lexicon: Lexicon = BUILT_IN,
): InferredTrack {
  if (statedTrack) return { track: statedTrack, source: 'stated' };
  const known = findKind(kind, lexicon);
  if (known) return { track: known.track, source: 'kind' };
  return { track: TRACK_OF_UNKNOWN_KIND, source: 'unknown-kind' };
}

export function trackOf(statedTrack: Track | null, kind: string, lexicon: Lexicon = BUILT_IN): Track {
  return inferTrack(statedTrack, kind, lexicon).track;
}
