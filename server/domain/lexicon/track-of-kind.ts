import type { Track } from '../frame/stage.ts';
import { hiragana } from './hiragana.ts';
import { KINDS, spellings, type Kind } from './kinds.ts';

export interface InferredTrack {
  readonly track: Track;
  readonly source: 'stated' | 'kind' | 'unknown-kind';
}

/**
 * The track of a kind that the lexicon does not know. 'wall' is the only track with all five stages,
 * so nobody is kept from saying what a photo shows; its price is a tally that may never fill up.
 */
export const TRACK_OF_UNKNOWN_KIND: Track = 'wall';

/** NFKC (UAX #15), lower case, hiragana, single spaces: what makes two spellings the same word here. */
export function foldTerm(text: string): string {
  return hiragana(text.normalize('NFKC').toLowerCase()).replace(/\s+/gu, ' ').trim();
}

const bySpelling: ReadonlyMap<string, Kind> = new Map(
  KINDS.flatMap((kind) => spellings(kind).map((term) => [foldTerm(term), kind] as const)),
);

/** The lexicon's entry for exactly this word, or undefined; near misses are not guessed. */
export function findKind(term: string): Kind | undefined {
  return bySpelling.get(foldTerm(term));
}

/** The stages that a member passes, with how that is known: stated, by its kind, or assumed. */
export function inferTrack(statedTrack: Track | null, kind: string): InferredTrack {
  if (statedTrack) return { track: statedTrack, source: 'stated' };
  const known = findKind(kind);
  if (known) return { track: known.track, source: 'kind' };
  return { track: TRACK_OF_UNKNOWN_KIND, source: 'unknown-kind' };
}

export function trackOf(statedTrack: Track | null, kind: string): Track {
  return inferTrack(statedTrack, kind).track;
}
