import type { ReleaseChangeView } from '../../contract/review-views.ts';
import type { ReleasedMember } from '../../contract/hold.ts';

interface Said {
  readonly who: string;
  readonly when: string;
}

/** The sentences of a release sheet. Times, stages and kinds come in the words of whoever draws it. */
export interface SheetWords {
  readonly title: (covering: string) => string;
  readonly withdrawn: (said: Said & { reason: string }) => string;
  readonly fact: Readonly<
    Record<'house' | 'covering' | 'released' | 'times' | 'rule' | 'note' | 'entry' | 'head', string>
  >;
  readonly covering: (name: string, kind: string) => string;
  readonly said: (said: Said) => string;
  readonly zone: (zone: string) => string;
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
  readonly members: { readonly heading: (count: number) => string; readonly lead: string };
  readonly state: Readonly<Record<ReleasedMember['state'], string>>;
  readonly least: (stage: string, views: number) => string;
  readonly whole: string;
  readonly hidden: (part: string) => string;
  readonly part: (from: string, to: string) => string;
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
  readonly later: {
    readonly heading: string;
    readonly lead: (when: string) => string;
    readonly stands: string;
    readonly standing: string;
    readonly closing: string;
    readonly open: string;
    readonly closedUnder: (when: string) => string;
    readonly closedElse: (when: string) => string;
    readonly what: Readonly<Record<ReleaseChangeView['what'], string>>;
    readonly changes: string;
    readonly unchanged: string;
    readonly changed: string;
    readonly ended: Readonly<Record<'withdrawn' | 'superseded' | 'disputed', (said: Said) => string>>;
    readonly gone: (record: string) => string;
    readonly come: (record: string) => string;
  };
  /** Whoever speaks where no person did. */
  readonly nobody: string;
  /** Between the parts of a line. */
  readonly and: string;
}
