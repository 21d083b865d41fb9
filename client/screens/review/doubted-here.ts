import type { ReviewView } from '#domain/contract/review-views';
import { evidenceOf, type Shown } from './evidence-of.ts';
import type { ReviewDraft } from './review-draft.ts';

type Told = Pick<Shown, 'tag' | 'told'>;

/** A member whose record somebody has doubted since the covering was said to be ready, and why. */
export interface DoubtedHere {
  readonly mark: string;
  readonly reason: string;
}

/** By this account, here or at the photo; doubts that were answered are none. */
export function doubtedHere(
  review: Pick<ReviewView, 'lines' | 'evidence'> & { covering: Pick<ReviewView['covering'], 'hold'> },
  draft: ReviewDraft,
  account: string,
): DoubtedHere[] {
  const since = Date.parse(review.covering.hold.said?.at ?? '');
  const isOwn = (one: Told) => {
    const { disputed } = one.tag;
    return isDoubted(one) && disputed?.by?.id === account && Date.parse(disputed.at) >= since;
  };
  return review.lines.flatMap((line) => {
    const evidence = evidenceOf(review, line);
    const reason = doubtOf(draft, line.mark, evidence) ?? evidence.find(isOwn)?.tag.disputed?.reason;
    return reason === undefined ? [] : [{ mark: line.mark, reason }];
  });
}

/** Why a record was doubted in this review. A tag that is no evidence any more is not asked about. */
export function doubtOf(
  { doubts }: ReviewDraft,
  mark: string,
  evidence: readonly Told[],
): string | undefined {
  const doubt = doubts[mark];
  const found = evidence.find(({ tag }) => tag.id === doubt?.tag);
  return found && !isDoubted(found) ? undefined : doubt?.reason;
}

/** Whether somebody doubts a tag and nobody has answered yet. */
export function isDoubted({ tag, told }: Pick<Shown, 'tag' | 'told'>): boolean {
  return tag.state === 'standing' && tag.disputed !== null && !isDoubtAnswered(told);
}

export function isDoubtAnswered({ findings }: Shown['told']): boolean {
  return findings.some(({ kind, accepted }) => kind === 'disputed' && accepted !== null);
}
