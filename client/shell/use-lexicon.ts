import { createContext, useContext } from 'react';
import { BUILT_IN, type Lexicon } from '#domain/lexicon/lexicon';

/** The words of the house: those of the program until the crew's own have come. */
export const LexiconContext = createContext<Lexicon>(BUILT_IN);

export function useLexicon(): Lexicon {
  return useContext(LexiconContext);
}
