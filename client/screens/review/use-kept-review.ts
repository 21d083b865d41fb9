import { useRef, useState } from 'react';
import type { ReviewView } from '#domain/contract/review-views';
import { useSession } from '../../api/use-session.ts';
import { browserStorage } from '../../outbox/browser-storage.ts';
import { keepReview, readReview } from './kept-review.ts';
import { NOTHING_SAID, takeUp, type ReviewDraft } from './review-draft.ts';

type Reviewed = Pick<ReviewView, 'lastRefusal'> & { readonly covering: Pick<ReviewView['covering'], 'id'> };

/** The review of a covering by whoever is signed in, as far as it has come in this browser. */
export function useKeptReview({ covering: { id: covering }, lastRefusal }: Reviewed) {
  const storage = browserStorage('localStorage');
  const account = useSession().data?.account?.id ?? '';
  const [kept, setKept] = useState(() => readReview(storage, account, covering));
  const draft = takeUp(kept, lastRefusal);
  // Keys come faster than the screen is drawn.
  const latest = useRef(draft);
  latest.current = takeUp(latest.current, lastRefusal);
  const change = (next: ReviewDraft) => {
    latest.current = next;
    setKept(next);
    keepReview(storage, account, covering, next);
  };
  const end = () => {
    latest.current = NOTHING_SAID;
    keepReview(storage, account, covering, null);
  };
  return { draft, latest, change, end };
}
