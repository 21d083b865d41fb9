import type { Fields, JsonObject } from '../fields.ts';
import type { LedgerEntry } from '../ledger-entry.ts';

/** What the record says, as far as the tables of an archive tell it: rows as they stand there, by their key. */
export interface State {
  houseName: string;
  /** IANA. */
  houseZone: string;
  readonly members: Map<string, JsonObject>;
  readonly photos: Map<string, JsonObject>;
  /** Those that stand. */
  readonly tags: Map<string, JsonObject>;
  readonly coverings: Map<string, JsonObject>;
  readonly releases: Map<string, JsonObject>;
  /** Every tag that was ever placed. */
  readonly placed: Set<string>;
  /** In the order in which they were given. */
  readonly given: GivenRelease[];
  /** By release. */
  readonly takenBack: Map<string, TakenBack>;
  readonly stamped: StampedHead[];
}

export interface TakenBack {
  readonly at: string;
  /** By name; null where the machine speaks. */
  readonly by: string | null;
  readonly reason: string;
}

/** A tree head for which a stamp was got; whether the stamp is good, others tell. */
export interface StampedHead {
  readonly seq: number;
  readonly size: number;
  readonly head: string;
}

/** What a release claims to rest on. */
export interface GivenRelease {
  readonly release: string;
  readonly covering: string;
  readonly seq: number;
  readonly head: { readonly size: number; readonly hash: string };
}

export function emptyState(): State {
  return {
    houseName: '',
    houseZone: 'UTC',
    members: new Map(),
    photos: new Map(),
    tags: new Map(),
    coverings: new Map(),
    releases: new Map(),
    placed: new Set(),
    given: [],
    takenBack: new Map(),
    stamped: [],
  };
}

/** How one version of a kind of statement changes the state. Throws FieldMissing or Wrong. */
export type Act = (state: State, payload: Fields, entry: LedgerEntry) => void;
/** By version. */
export type Versions = Readonly<Record<number, Act>>;
export type Acts = Readonly<Record<string, Versions>>;

/** Puts other values into a row that is there; of one that is not nothing can be said. */
export function amend(rows: Map<string, JsonObject>, key: string, values: JsonObject): void {
  const row = rows.get(key);
  if (row) rows.set(key, { ...row, ...values });
}
