import type { GivenRelease, State, TagWord } from './replay/state.ts';

/** A record that a release rests on, of which something was said after it. */
export interface ToldRecord {
  readonly tag: string;
  /** For which it counted. */
  readonly mark: string;
  /** At the end of the ledger; doubted: without an answer that stands. */
  readonly state: 'doubted' | 'answered' | 'withdrawn' | 'superseded';
  /** After the release, in order. */
  readonly said: readonly TagWord[];
}

/** Of the records that a release rests on, those of which something was said after it, in the order of its members. */
export function recordsSince(
  { ofTags }: Pick<State, 'ofTags'>,
  { seq, members }: GivenRelease,
): ToldRecord[] {
  const marks = new Map(members.flatMap(({ mark, tags }) => tags.map((tag) => [tag, mark] as const)));
  return [...marks].flatMap(([tag, mark]) => {
    const said = (ofTags.get(tag) ?? []).filter((word) => word.seq > seq);
    const state = stateAfter(said);
    return state === null ? [] : [{ tag, mark, state, said }];
  });
}

/** Those that stand no more, or under a doubt: whether they counted on, the ledger alone does not tell. */
export function shakenIn(since: readonly ToldRecord[]): ToldRecord[] {
  return since.filter(({ state }) => state !== 'answered');
}

/** What ended stays ended, whatever is said of it later. */
function stateAfter(said: readonly TagWord[]): ToldRecord['state'] | null {
  const end = said.find(({ what }) => what === 'withdrawn' || what === 'superseded');
  const what = (end ?? said.at(-1))?.what;
  if (what === undefined) return null;
  return what === 'reopened' ? 'doubted' : what;
}
