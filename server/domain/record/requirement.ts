import type { CoveringKind } from '../contract/shapes.ts';
import type { DatedBy } from '../contract/clock.ts';
import type { MissReason } from '../contract/report-views.ts';
import { stageRank, type Stage } from '../frame/stage.ts';
import type { CaptureDoubt } from '../photo/capture-doubts.ts';
import type { Verdict } from '../photo/legibility.ts';
import type { Sheeted } from './protection.ts';
import { shownParts } from './shown-parts.ts';
import { meets, type Stretch } from './stretches.ts';
import { stopsRecords, type FindingKind } from './findings/kinds.ts';

/** Something to be looked at about a tag; accepted: who has answered for what it says today, and why. */
export interface TagFinding {
  readonly kind: FindingKind;
  readonly accepted: { readonly by: string | null; readonly reason: string } | null;
  /** Of a doubt: whose it is, and why. */
  readonly doubt?: { readonly by: string; readonly reason: string } | undefined;
}

/** A tag that stands, with the instant of its photo; instants are UTC text of one form and compare as text. */
export interface StandingTag {
  readonly id: string;
  readonly photo: string;
  readonly mark: string;
  readonly stage: Stage;
  /** The part of the member that it shows; without one all of it. */
  readonly stretch?: Stretch | null;
  /** What of the member lay under protection at that instant, or may have. */
  readonly sheeted?: readonly Sheeted[];
  /** null where the photo is undated. */
  readonly instant: string | null;
  /** Seconds by which the instant may be wrong; 0 where there is none. */
  readonly uncertaintyS: number;
  /** By what the instant is known; null where there is none. */
  readonly datedBy: DatedBy | null;
  /** What contradicts the instant, if anything does. */
  readonly doubt: CaptureDoubt | null;
  /** null: not measured; that must not be held against a photo. */
  readonly legibility: Verdict | null;
  readonly findings: readonly TagFinding[];
}

/** What a covering needs on record about one member. */
export interface Requirement {
  readonly covering: CoveringKind;
  readonly least: Stage;
  /** From when nothing can be seen of it any more; null: it still can. */
  readonly closedAt: string | null;
  /** Photos that must show each part; one where nothing is said. */
  readonly views?: number;
  /** What of it the covering hides; without one all of it. */
  readonly hidden?: Stretch | null;
  /** Parts of that which another layer had hidden before; they are asked for there. */
  readonly before?: readonly Stretch[];
}

/**
 * Why a tag does not count, in the order of MISS_REASONS; empty when it counts (design 3.4).
 * What is seen after plastering is the plaster: building codes ask for the look before it
 * (IBC 110.3.6, lath "before any plastering is applied"; Japan's BSA art. 7-3 (6) alike).
 */
export function reasonsAgainst(tag: StandingTag, requirement: Requirement): MissReason[] {
  const { covering, least, closedAt, hidden } = requirement;
  const reasons: MissReason[] = [];
  const isElsewhere = hidden && tag.stretch && !meets(tag.stretch, [hidden]);
  if (isElsewhere) reasons.push('other-stretch');
  if (stageRank(tag.stage) < stageRank(least)) reasons.push('before-stage');
  if (covering === 'plaster' && tag.stage === 'plastered') reasons.push('shows-the-covering');
  if (!isElsewhere) reasons.push(...underProtection(tag, hidden ?? null));
  if (tag.instant === null) reasons.push('undated');
  else if (closedAt !== null) reasons.push(...afterClosing(tag.instant, tag.uncertaintyS, closedAt));
  if (tag.doubt !== null) reasons.push(tag.doubt);
  const against = tag.findings.filter(({ kind, accepted }) => stopsRecords(kind) && accepted === null);
  if (against.some(({ kind }) => kind === 'disputed')) reasons.push('disputed');
  if (against.some(({ kind }) => kind !== 'disputed')) reasons.push('contradicted');
  if (tag.legibility === 'unreadable' && !isAcceptedUnread(tag)) reasons.push('unreadable');
  return reasons;
}

/** Somebody has said by name that it shows the member all the same. */
const isAcceptedUnread = ({ findings }: StandingTag) =>
  findings.some(({ kind, accepted }) => kind === 'unreadable' && accepted !== null);

/**
 * Whether nobody's word and nobody's eye is needed for a record that counts: nothing is to be looked at
 * about it, answered or not, its region is not hard to read, and its time is not a person's.
 */
export function isFirm(tag: Pick<StandingTag, 'findings' | 'legibility' | 'datedBy'>): boolean {
  return tag.findings.length === 0 && tag.legibility !== 'weak' && tag.datedBy !== 'by-hand';
}

/** Nothing that it shows of what is hidden was bare: what lay over it is seen instead. */
function underProtection(tag: StandingTag, hidden: Stretch | null): MissReason[] {
  if (shownParts(tag, hidden).length > 0) return [];
  const sure = { ...tag, sheeted: (tag.sheeted ?? []).filter(({ isSure }) => isSure) };
  return [shownParts(sure, hidden).length > 0 ? 'perhaps-under-protection' : 'under-protection'];
}

/** A photo taken before closing by less than its time may be wrong by proves nothing. */
function afterClosing(instant: string, uncertaintyS: number, closedAt: string): MissReason[] {
  if (instant >= closedAt) return ['after-closing'];
  return isCertainlyBefore(instant, uncertaintyS, closedAt) ? [] : ['perhaps-after-closing'];
}

/** Whether an instant lies before a closing even if it is as wrong as it may be. */
export function isCertainlyBefore(instant: string, uncertaintyS: number, closedAt: string): boolean {
  return instant < closedAt && Date.parse(closedAt) - Date.parse(instant) >= uncertaintyS * 1000;
}
