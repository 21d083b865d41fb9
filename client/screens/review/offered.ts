import type { ReviewLineView, ReviewView } from '#domain/contract/review-views';
import type { Shown } from './evidence-of.ts';
import type { ReviewDraft } from './review-draft.ts';

/** What was said of a member before, to be said again or altered; empty where there is nothing. */
export interface Offered {
  readonly reason: string;
  readonly lacks: string;
}

interface Before extends Pick<ReviewView, 'lastRefusal' | 'lastWaived'> {
  readonly draft: ReviewDraft;
  /** By mark, why its record was doubted here. */
  readonly doubts: Readonly<Record<string, string>>;
}

/**
 * The last reason to accept it and the last word on what is missing: one's own answer, then a doubt, then the
 * last review, unless there is something new on record since.
 */
export function offeredOf(
  { draft, doubts, lastRefusal, lastWaived }: Before,
  { mark }: Pick<ReviewLineView, 'mark'>,
  evidence: readonly Pick<Shown, 'tag' | 'told'>[],
): Offered {
  const answer = draft.said[mark]?.answer;
  const waived = lastWaived?.waived.find((one) => one.mark === mark)?.reason;
  const refused = lastRefusal?.lacking.find((one) => one.mark === mark && !one.saidSince)?.note;
  const doubted = doubts[mark] ?? evidence.find(isDoubted)?.tag.disputed?.reason;
  return {
    reason: (answer?.is === 'waived' ? answer.reason : waived) ?? '',
    lacks: (answer?.is === 'missing' ? answer.note : (doubted ?? refused)) ?? '',
  };
}

/** Whether somebody doubts a tag and nobody has answered yet. */
export function isDoubted({ tag, told }: Pick<Shown, 'tag' | 'told'>): boolean {
  return tag.state === 'standing' && tag.disputed !== null && !isDoubtAnswered(told);
}

export function isDoubtAnswered({ findings }: Shown['told']): boolean {
  return findings.some(({ kind, accepted }) => kind === 'disputed' && accepted !== null);
}
