import type { ReleasedMember } from '../../contract/hold.ts';
import type { ReleaseChangeView, TagDoubtView } from '../../contract/review-views.ts';
import type { Role } from '../../contract/shapes.ts';
import type { ToldZone } from './told-zone.ts';

interface Said {
  /** With the role that they had then. */
  readonly who: string;
  readonly when: string;
}

type FactName =
  'house' | 'covering' | 'released' | 'keeper' | 'times' | 'rule' | 'note' | 'number' | 'entry' | 'head';

/** The sentences of a release sheet. Times, stages and kinds come in the words of whoever draws it. */
export interface SheetWords {
  readonly title: (covering: string) => string;
  readonly withdrawn: (said: Said & { reason: string }) => string;
  readonly ended: (said: Said) => string;
  readonly notForAll: (told: { marks: readonly string[]; when: string }) => string;
  readonly fact: Readonly<Record<FactName, string>>;
  readonly covering: (name: string, kind: string) => string;
  readonly said: (said: Said) => string;
  readonly person: (name: string, role: string) => string;
  readonly role: Readonly<Record<Role, string>>;
  readonly zone: (zone: ToldZone) => string;
  readonly fourEyes: string;
  readonly twoEyes: string;
  readonly noNote: string;
  readonly entry: (seq: number, size: number) => string;
  readonly check: string;
  readonly caution: string;
  readonly waived: {
    readonly heading: string;
    readonly none: string;
    readonly lead: (who: string) => string;
  };
  readonly refused: {
    readonly heading: string;
    readonly lead: string;
    readonly lacks: (mark: string, note: string) => string;
  };
  readonly members: { readonly heading: (count: number) => string; readonly lead: string };
  readonly state: Readonly<Record<ReleasedMember['state'], string>>;
  readonly least: (stage: string, views: number) => string;
  readonly whole: string;
  readonly hidden: (part: string) => string;
  readonly part: Readonly<
    Record<'named' | 'shown' | 'fromFoot' | 'fromEnd', (from: string, to: string) => string>
  >;
  readonly missing: (parts: readonly string[]) => string;
  readonly missingAll: string;
  readonly reason: (reason: string) => string;
  readonly shows: (mark: string, stage: string, file: string) => string;
  readonly taken: (when: string, within: string) => string;
  readonly undated: string;
  readonly corrected: string;
  readonly byHand: (who: string) => string;
  readonly within: (seconds: number) => string;
  readonly stage: (stage: string) => string;
  readonly taggedBy: (said: Said) => string;
  /** What was said against a record and for it, before the release, in order. */
  readonly doubt: Readonly<Record<TagDoubtView['what'], (said: Said & { reason: string }) => string>>;
  readonly doubts: (said: readonly string[]) => string;
  readonly later: {
    readonly heading: string;
    readonly lead: (when: string) => string;
    readonly stands: string;
    readonly standing: string;
    /** It holds for the rest. */
    readonly notFor: (marks: readonly string[]) => string;
    readonly closing: string;
    readonly open: string;
    readonly closedUnder: (when: string) => string;
    readonly closedElse: (when: string) => string;
    /** Of records, where none has come, and where none has gone. */
    readonly fewer: string;
    readonly more: string;
    readonly what: Readonly<Record<ReleaseChangeView['what'], string>>;
    readonly changes: string;
    readonly unchanged: string;
    readonly changed: string;
    readonly ended: Readonly<
      Record<'withdrawn' | 'superseded' | 'disputed', (said: Said & { reason: string }) => string>
    >;
    readonly gone: (record: string) => string;
    readonly come: (record: string) => string;
  };
  /** Whoever speaks where no person did. */
  readonly nobody: string;
  /** Between the parts of a line. */
  readonly and: string;
}
