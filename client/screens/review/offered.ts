import type { ReviewLineView, ReviewView } from '#domain/contract/review-views';
import type { Shown } from './evidence-of.ts';
import { doubtOf, isDoubted } from './doubted-here.ts';
import type { ReviewDraft } from './review-draft.ts';

/** What was said of a member before, to be said again or altered; empty where there is nothing. */
export interface Offered {
  readonly reason: string;
  readonly lacks: string;
}

interface Before extends Pick<ReviewView, 'lastRefusal' | 'lastWaived'> {
  readonly draft: ReviewDraft;
}

/**
 * The last reason to accept it and the last word on what is missing: one's own answer, then a doubt, then the
 * last review, unless there is something new on record since.
 */
export function offeredOf(
  { draft, lastRefusal, lastWaived }: Before,
  { mark }: Pick<ReviewLineView, 'mark'>,
  evidence: readonly Pick<Shown, 'tag' | 'told'>[],
): Offered {
  const answer = draft.said[mark]?.answer;
  const waived = lastWaived?.waived.find((one) => one.mark === mark)?.reason;
  const refused = lastRefusal?.lacking.find((one) => one.mark === mark && !one.saidSince)?.note;
  const doubted = doubtOf(draft, mark, evidence) ?? evidence.find(isDoubted)?.tag.disputed?.reason;
  return {
    reason: (answer?.is === 'waived' ? answer.reason : waived) ?? '',
    lacks: (answer?.is === 'missing' ? answer.note : (doubted ?? refused)) ?? '',
  };
}
