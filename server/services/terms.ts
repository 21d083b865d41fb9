import type { AccountView } from '#domain/contract/views';
import type { KindSightingView, TermFacts, TermView } from '#domain/contract/terms';
import { BUILT_IN, lexiconOf, takenSpelling } from '#domain/lexicon/lexicon';
import { speaker, type Context } from './context.ts';
import { cropAddress } from './crop-address.ts';
import { Failure } from './failure.ts';
import type { HouseWriting } from './record-store.ts';
import { sameContent } from './same-content.ts';

const UUID = /^[0-9a-f]{8}-/;

export async function listTerms(context: Context, house: string): Promise<TermView[]> {
  return context.store.read.terms(house);
}

export async function putTerm(
  context: Context,
  account: AccountView,
  { house, term }: { house: string; term: string },
  facts: TermFacts,
): Promise<TermView> {
  // A word that a later program may use as an id would then rename its kind.
  if (!UUID.test(term) && !BUILT_IN.byId.has(term)) throw new Failure('not-found', { what: 'term' });
  if (facts.kanji === '' && facts.en === '') throw new Failure('term-without-name');
  return context.store.write(house, speaker(account), async (writing) => {
    const terms = await writing.terms(house);
    const before = terms.find(({ id }) => id === term);
    if (before && sameContent(factsOf(before), facts)) return before;
    const taken = takenSpelling(lexiconOf(terms), { ...facts, id: term });
    if (taken) throw new Failure('term-spelling-taken', { spelling: taken.spelling, ...namesOf(taken.by) });
    await writing.say({ kind: 'term.entered', version: 1, payload: { term, ...facts } });
    return required(writing, term);
  });
}

export async function removeTerm(
  context: Context,
  account: AccountView,
  { house, term }: { house: string; term: string },
  reason: string,
): Promise<void> {
  await context.store.write(house, speaker(account), async (writing) => {
    const { id: _, by: __, at: ___, ...facts } = await required(writing, term);
    const others = (await writing.terms(house)).filter(({ id }) => id !== term);
    // A kind that gets its own names back must not meet another that has taken one of them meanwhile.
    const builtIn = BUILT_IN.byId.get(term);
    const taken = builtIn && takenSpelling(lexiconOf(others), builtIn);
    if (taken) throw new Failure('term-spelling-taken', { spelling: taken.spelling, ...namesOf(taken.by) });
    const payload = { term, was: facts.kanji || facts.en, reason };
    await writing.say({ kind: 'term.removed', version: 1, payload });
  });
}

export async function readKindSightings(
  context: Context,
  house: string,
  kind: string,
  limit: number,
): Promise<{ sightings: KindSightingView[]; total: number }> {
  const { sightings, total } = await context.store.read.kindSightings(house, kind, limit);
  return {
    sightings: sightings.map((seen) => ({ ...seen, crop: cropAddress(seen.tag) })),
    total,
  };
}

async function required(writing: HouseWriting, term: string): Promise<TermView> {
  const found = (await writing.terms(writing.houseId)).find(({ id }) => id === term);
  if (!found) throw new Failure('not-found', { what: 'term' });
  return found;
}

const namesOf = ({ kanji, en }: { kanji: string; en: string }) => ({
  other: [kanji, en].filter(Boolean).join(', '),
});

function factsOf({ id: _, by: __, at: ___, ...facts }: TermView): TermFacts {
  return facts;
}
