import { nameOf } from './replay/coverings.ts';
import type { GivenRelease, Said, SaidClosing, SaidRefusal, State, TakenBack } from './replay/state.ts';
import { recordsSince, type ToldRecord } from './told-since.ts';

/** A covering that was released, refused or closed, as the ledger tells it: no page of the archive has a say in it. */
export interface ToldCovering {
  readonly covering: string;
  /** As it is called at the end of the ledger. */
  readonly name: string;
  /** In the order in which they were given. */
  readonly releases: readonly ToldRelease[];
  /** In the order in which they were said. */
  readonly refusals: readonly SaidRefusal[];
  readonly closings: readonly SaidClosing[];
}

export interface ToldRelease extends GivenRelease {
  /** null while it stands. */
  readonly takenBack: TakenBack | null;
  /** The word that the covering is ready anew, said while it stood. */
  readonly ended: Said | null;
  /** Of its records, those that were doubted, answered for, withdrawn or replaced after it. */
  readonly since: readonly ToldRecord[];
}

/** In the order in which they were first released, refused or closed. */
export function tellCoverings(state: State): ToldCovering[] {
  const { given, closings, refusals, takenBack, ended } = state;
  const said = [...given, ...refusals, ...closings].sort((one, other) => one.seq - other.seq);
  return [...new Set(said.map(({ covering }) => covering))].map((covering) => ({
    covering,
    name: nameOf(state, covering),
    releases: given
      .filter((one) => one.covering === covering)
      .map((one) => ({
        ...one,
        takenBack: takenBack.get(one.release) ?? null,
        ended: ended.get(one.release) ?? null,
        since: recordsSince(state, one),
      })),
    refusals: refusals.filter((one) => one.covering === covering),
    closings: closings.filter((one) => one.covering === covering),
  }));
}
