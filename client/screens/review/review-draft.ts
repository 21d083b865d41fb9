import type { Lacking } from '#domain/contract/hold';
import type { LastRefusalView, ReviewLineView } from '#domain/contract/review-views';
import { needsWaiver } from '#domain/record/release';

/** What somebody says of one member: that it may go, why it may although it has no record, or that something is missing. */
export type Answer =
  | { readonly is: 'seen' }
  | { readonly is: 'waived'; readonly reason: string }
  | { readonly is: 'missing'; readonly note: string };

/** A review as far as it has come; each answer with what it was given about. */
export interface ReviewDraft {
  readonly said: Readonly<Record<string, { readonly basis: string; readonly answer: Answer }>>;
  /** The last reasons for which a gap was accepted, the newest first. */
  readonly reasons: readonly string[];
  readonly note: string;
  /** By mark, the tag that was doubted in this review, and why. */
  readonly doubts: Readonly<Record<string, { readonly tag: string; readonly reason: string }>>;
  /** The instant of the refusal after which refused members were asked for anew. */
  readonly takenUpAfter: string | null;
}

export const NOTHING_SAID: ReviewDraft = {
  ...{ said: {}, reasons: [], note: '', doubts: {}, takenUpAfter: null },
};

/** After a refusal the answers go on standing, but those of the refused members; its doubts belong to what was refused. */
export function takeUp(draft: ReviewDraft, refusal: Refusal | null): ReviewDraft {
  if (refusal === null || draft.takenUpAfter === refusal.at) return draft;
  const refused = new Set<string>(refusal.lacking.map(({ mark }) => mark));
  const standing = Object.entries(draft.said).filter(([mark]) => !refused.has(mark));
  return { ...draft, said: Object.fromEntries(standing), doubts: {}, takenUpAfter: refusal.at };
}

type Refusal = Pick<LastRefusalView, 'at'> & { readonly lacking: readonly Pick<Lacking, 'mark'>[] };

type Line = Pick<ReviewLineView, 'mark' | 'basis' | 'state'>;

/** What was said of a line as it stands now. */
export function answerOf({ said }: ReviewDraft, line: Line): Answer | null {
  const found = said[line.mark];
  if (found?.basis !== line.basis) return null;
  return found.answer.is === 'seen' && needsWaiver(line) ? null : found.answer;
}

/** Whether something was said of a line, and what speaks for it is no longer the same. */
export function hasChanged({ said }: ReviewDraft, { mark, basis }: Line): boolean {
  const found = said[mark];
  return found !== undefined && found.basis !== basis;
}

const OFFERED = 3;

export function say(draft: ReviewDraft, { mark, basis }: Line, answer: Answer): ReviewDraft {
  const said = { ...draft.said, [mark]: { basis, answer } };
  if (answer.is !== 'waived') return { ...draft, said };
  const others = draft.reasons.filter((reason) => reason !== answer.reason);
  return { ...draft, said, reasons: [answer.reason, ...others].slice(0, OFFERED) };
}

/** The next member nobody has answered for, after this one and then from the beginning; null: none is left. */
export function nextOpen<L extends Line>(
  draft: ReviewDraft,
  lines: readonly L[],
  after: string | null,
): string | null {
  const at = lines.findIndex(({ mark }) => mark === after) + 1;
  const around = [...lines.slice(at), ...lines.slice(0, at)];
  return around.find((line) => answerOf(draft, line) === null)?.mark ?? null;
}

/** Whether a refusal would tell whoever records what to mend. */
export function hasWords({ note }: ReviewDraft, { missing }: Outcome<unknown>): boolean {
  return note.trim() !== '' || missing.some((one) => one.note.trim() !== '');
}

export interface Outcome<L> {
  readonly seen: readonly L[];
  readonly waived: readonly { readonly line: L; readonly reason: string }[];
  readonly missing: readonly { readonly line: L; readonly note: string }[];
  readonly open: readonly L[];
}

/** What the answers so far come to. */
export function outcomeOf<L extends Line>(draft: ReviewDraft, lines: readonly L[]): Outcome<L> {
  const answered = lines.map((line) => ({ line, answer: answerOf(draft, line) }));
  return {
    seen: answered.flatMap(({ line, answer }) => (answer?.is === 'seen' ? [line] : [])),
    waived: answered.flatMap(({ line, answer }) =>
      answer?.is === 'waived' ? [{ line, reason: answer.reason }] : [],
    ),
    missing: answered.flatMap(({ line, answer }) =>
      answer?.is === 'missing' ? [{ line, note: answer.note }] : [],
    ),
    open: answered.flatMap(({ line, answer }) => (answer === null ? [line] : [])),
  };
}
