import { foldTerm } from './fold-term.ts';
import { spellings, type Kind } from './kind.ts';

/** The kinds of one house: those that come with the program, renamed or joined by what its crew entered. */
export interface Lexicon {
  readonly kinds: readonly Kind[];
  readonly byId: ReadonlyMap<string, Kind>;
  readonly bySpelling: ReadonlyMap<string, Kind>;
}

/**
 * `terms` are the crew's own, at most one an id. One with the id of a built-in kind renames it in this house;
 * the built-in names stay findable. Where a later version of the program brings a spelling that the crew
 * uses for something else, the crew's word holds.
 */
export function makeLexicon(builtIn: readonly Kind[], terms: readonly Kind[]): Lexicon {
  const own = new Map(terms.map((term) => [term.id, term]));
  const kinds = builtIn.map((kind) => {
    const term = own.get(kind.id);
    own.delete(kind.id);
    return term ? renamed(kind, term) : kind;
  });
  const all = [...kinds, ...own.values()];
  const said = terms.flatMap((term) => all.filter(({ id }) => id === term.id));
  return {
    kinds: all,
    byId: new Map(all.map((kind) => [kind.id, kind])),
    bySpelling: new Map([
      ...all.flatMap((kind) => spellingsOf(kind, spellings(kind))),
      ...wordsOfTerms(said, terms),
    ]),
  };
}

/** Before any kinds are known. */
export const NO_KINDS: Lexicon = makeLexicon([], []);

/** The entry for exactly this word, or undefined; near misses are not guessed. */
export function kindIn(lexicon: Lexicon, term: string): Kind | undefined {
  return lexicon.bySpelling.get(foldTerm(term));
}

function renamed(kind: Kind, term: Kind): Kind {
  const now = spellings(term);
  return { ...term, also: [...term.also, ...spellings(kind).filter((name) => !now.includes(name))] };
}

/** Only what was entered in so many words: the built-in names of a renamed kind push nobody aside. */
function wordsOfTerms(kinds: readonly Kind[], terms: readonly Kind[]): [string, Kind][] {
  return kinds.flatMap((kind, i) => spellingsOf(kind, spellings(terms[i] ?? kind)));
}

function spellingsOf(kind: Kind, names: readonly string[]): [string, Kind][] {
  return names.map((name) => [foldTerm(name), kind]);
}

/** The first spelling of this term that another kind of the lexicon has, with that kind; null: none. */
export function takenSpelling(lexicon: Lexicon, term: Kind): { spelling: string; by: Kind } | null {
  for (const spelling of spellings(term)) {
    const by = lexicon.bySpelling.get(foldTerm(spelling));
    if (by && by.id !== term.id) return { spelling, by };
  }
  return null;
}
