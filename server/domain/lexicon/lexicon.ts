import { KINDS, type Kind } from './kinds.ts';
import { makeLexicon, takenSpelling, type Lexicon } from './make-lexicon.ts';

export { takenSpelling, type Lexicon };

/** The words of a house whose crew has entered these. */
export function lexiconOf(terms: readonly Kind[]): Lexicon {
  return makeLexicon(KINDS, terms);
}

export const BUILT_IN: Lexicon = lexiconOf([]);
