import type { Capture } from '#domain/contract/capture';
import type { CoveringKind, Person } from '#domain/contract/shapes';
import type { Stage } from '#domain/frame/stage';
import type { Json } from '#domain/ledger/canonical-json';
import type { Entry, StatementKind, StatementOf } from '#domain/ledger/statements';
import type { Lexicon } from '#domain/lexicon/lexicon';
import type { Region } from '#domain/photo/region';

/** What the record says today, as it stands in the tables of an archive. Only what was stated, nothing worked out. */
export interface ArchiveTables {
  /** By mark, in UTF-16 code units; the other tables by id, releases in the order in which they were given. */
  readonly members: readonly ArchivedMember[];
  readonly photos: readonly ArchivedPhoto[];
  readonly tags: readonly ArchivedTag[];
  readonly coverings: readonly ArchivedCovering[];
  readonly releases: readonly ArchivedRelease[];
}

export interface ArchivedMember {
  readonly mark: string;
  readonly kind: string;
  readonly name: string;
  readonly place: string;
  readonly track: string | null;
  readonly note: string;
  readonly other: Readonly<Record<string, string>>;
  readonly setOut: object | null;
  readonly retired: boolean;
}

export interface ArchivedPhoto {
  readonly photo: string;
  readonly sha256: string;
  readonly bytes: number;
  readonly mediaType: string;
  readonly fileName: string;
  readonly width: number;
  readonly height: number;
  readonly addedAt: string;
  readonly addedBy: Person | null;
  readonly byHand: object | null;
}

export interface ArchivedTag {
  readonly tag: string;
  readonly photo: string;
  readonly mark: string;
  readonly stage: Stage;
  readonly region: Region;
  readonly stretch: object | null;
  readonly note: string;
  readonly supersedes: string | null;
  readonly saidAt: string;
  readonly saidBy: Person | null;
}

export interface HiddenMember {
  readonly mark: string;
  readonly least: Stage;
}

export interface ArchivedCovering {
  readonly covering: string;
  readonly name: string;
  readonly kind: CoveringKind;
  readonly plannedDay: string | null;
  readonly note: string;
  readonly zone: object | null;
  readonly except: readonly string[];
  /** Those listed by hand. */
  readonly hides: readonly HiddenMember[];
  /** The latest word about its hold, and where that stands in the ledger. */
  readonly hold: { readonly said: string; readonly seq: number } | null;
  readonly closedAt: string | null;
  readonly closedBy: Person | null;
  readonly closeNote: string | null;
  readonly release: Json;
  readonly without: Json;
}

export interface ArchivedRelease {
  readonly release: string;
  readonly covering: string;
  readonly seq: number;
  readonly at: string;
  readonly by: Person | null;
  readonly head: Json;
  readonly hides: Json;
  readonly waived: Json;
  readonly note: string;
  readonly withdrawn: {
    readonly seq: number;
    readonly at: string;
    readonly by: Person | null;
    readonly reason: string;
  } | null;
}

/** All of a house that an archive is made of, except its ledger and its originals, as of one size of the ledger. */
export interface ArchiveMaterial {
  readonly house: { readonly name: string; readonly zone: string; readonly firstDay: string | null };
  readonly ledger: LedgerExtent;
  readonly tables: ArchiveTables;
  /** Photo → when it was taken, as that is decided today. */
  readonly captures: ReadonlyMap<string, Capture>;
  /** What was said of holds, closings, doubts and roles, in order. */
  readonly story: readonly StoryEntry[];
  /** The kinds of its members by their names. */
  readonly lexicon: Lexicon;
}

const STORY = [
  'role.granted',
  'role.withdrawn',
  'covering.ready',
  'covering.ready-withdrawn',
  'covering.refused',
  'covering.released',
  'release.withdrawn',
  'covering.closed',
  'covering.reopened',
  'tag.disputed',
  'findings.accepted',
  'finding.reopened',
] as const satisfies readonly StatementKind[];
export const STORY_KINDS: readonly StatementKind[] = STORY;

/** A statement of which the page in an archive tells beside the tables. */
export type StoryEntry = Entry<StatementOf<(typeof STORY)[number]>>;

/** Of these the words about a covering itself. */
export type OfCovering = Extract<StoryEntry, { payload: { covering: string } }>;

export interface LedgerExtent {
  readonly size: number;
  readonly head: string;
  /** Of the file of which each entry is a line. */
  readonly bytes: number;
}
