import type { Region } from '../../photo/region.ts';

/** A release as it is read from top to bottom, in words: the screen and the PDF draw the same. */
export interface Sheet {
  readonly title: string;
  /** That it does not stand any more, or not for all, and why; null while it stands for all. */
  readonly notice: string | null;
  readonly facts: readonly SheetFact[];
  /** Where it stands in the ledger. */
  readonly proof: SheetProof;
  readonly caution: string;
  readonly waived: SheetPart<SheetWaiver>;
  /** What had been found missing before; null: nothing. */
  readonly refused: SheetPart<SheetRefusal> | null;
  readonly members: SheetPart<SheetMember>;
  /** What has become otherwise later; no part of the release. */
  readonly later: SheetPart<SheetChange> & { readonly facts: readonly SheetFact[] };
}

export interface SheetFact {
  readonly name: string;
  readonly text: string;
}

export interface SheetProof {
  readonly number: SheetFact;
  readonly entry: SheetFact;
  readonly head: SheetFact;
  /** What the code beside it is for. */
  readonly check: string;
}

export interface SheetPart<T> {
  readonly heading: string;
  readonly lead: string;
  readonly items: readonly T[];
}

export interface SheetWaiver {
  readonly mark: string;
  readonly lines: readonly string[];
}

/** One refusal: who said it and when, and what was missing. */
export interface SheetRefusal {
  readonly said: string;
  readonly lines: readonly string[];
}

export interface SheetMember {
  readonly mark: string;
  /** What it is; empty where the schedule does not say. */
  readonly kind: string;
  /** As it was found when the covering was released. */
  readonly state: string;
  /** What is asked of it, and which part of it is hidden. */
  readonly text: string;
  readonly records: readonly SheetRecord[];
}

export interface SheetRecord {
  readonly tag: string;
  readonly photo: string;
  /** Address of the crop. */
  readonly crop: string;
  readonly region: Region;
  /** What the picture shows. */
  readonly shows: string;
  /** Whether its picture stands beside it: more than a few of a member say nothing more. */
  readonly isPictured: boolean;
  readonly lines: readonly string[];
}

export interface SheetChange {
  readonly mark: string;
  readonly lines: readonly string[];
}
