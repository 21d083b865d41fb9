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
  /** By release: the word that the covering is ready anew, said while it stood. */
  readonly ended: Map<string, Said>;
  /** In the order in which they were said, also those that were taken back. */
  readonly closings: SaidClosing[];
  /** In the order in which they were said. */
  readonly refusals: SaidRefusal[];
  /** Tag → what was said of it after it was placed, in order. */
  readonly ofTags: Map<string, TagWord[]>;
  /** Person → role. */
  readonly roles: Map<string, string>;
  readonly stamped: StampedHead[];
}

/** Where a word stands in the ledger, and who said it when. */
export interface Said {
  readonly seq: number;
  readonly at: string;
  /** By name; null where the machine speaks. */
  readonly by: string | null;
  /** That the person had then. */
  readonly role: string | null;
}

export interface TakenBack extends Said {
  readonly reason: string;
}

/** A tree head for which a stamp was got; whether the stamp is good, others tell. */
export interface StampedHead {
  readonly seq: number;
  readonly size: number;
  readonly head: string;
}

/** A release in its own words, with the head on which it claims to rest. */
export interface GivenRelease extends Said {
  readonly release: string;
  readonly covering: string;
  /** As the covering was called then. */
  readonly name: string;
  readonly head: { readonly size: number; readonly hash: string };
  readonly note: string;
  readonly members: readonly ReleasedMember[];
  readonly accepted: readonly AcceptedGap[];
}

export interface ReleasedMember {
  readonly mark: string;
  /** Those that counted. */
  readonly tags: readonly string[];
  /** Whether an earlier layer had hidden it, so that it needs no record here. */
  readonly isHiddenBefore: boolean;
}

/** A member that may go without a record, and why. */
export interface AcceptedGap {
  readonly mark: string;
  readonly reason: string;
}

export interface SaidClosing extends Said {
  readonly covering: string;
  readonly name: string;
  readonly closedAt: string;
  /** Under which; null: without release, for the reason in `without` where one was said. */
  readonly release: string | null;
  readonly without: string | null;
  readonly note: string;
  readonly takenBack: TakenBack | null;
}

/** That a covering may not close yet. */
export interface SaidRefusal extends Said {
  readonly covering: string;
  readonly name: string;
  readonly lacking: readonly { readonly mark: string; readonly note: string }[];
  readonly note: string;
}

/** A doubt of a tag, the answer to it, that this was taken back; and what ends a tag. */
export type TagWord = Said &
  (
    | { readonly what: 'doubted' | 'answered' | 'reopened' | 'withdrawn'; readonly reason: string }
    /** By a tag that says this. */
    | { readonly what: 'superseded'; readonly mark: string; readonly stage: string }
  );

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
    ended: new Map(),
    closings: [],
    refusals: [],
    ofTags: new Map(),
    roles: new Map(),
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
