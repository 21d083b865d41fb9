import { createContext, useContext } from 'react';
import { NO_KINDS, type Lexicon } from '#domain/lexicon/make-lexicon';

/** The words of the house: none until they have come, and a kind then stands as it was written. */
export const LexiconContext = createContext<Lexicon>(NO_KINDS);

export function useLexicon(): Lexicon {
  return useContext(LexiconContext);
}
