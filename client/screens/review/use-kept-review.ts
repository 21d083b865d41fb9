import { useRef, useState } from 'react';
import { useSession } from '../../api/use-session.ts';
import { browserStorage } from '../../outbox/browser-storage.ts';
import { keepReview, readReview } from './kept-review.ts';
import { NOTHING_SAID, type ReviewDraft } from './review-draft.ts';

/** The review of a covering by whoever is signed in, as far as it has come in this browser. */
export function useKeptReview(covering: string) {
  const storage = browserStorage('localStorage');
  const account = useSession().data?.account?.id ?? '';
  const [draft, setDraft] = useState(() => readReview(storage, account, covering));
  // Keys come faster than the screen is drawn.
  const latest = useRef(draft);
  const change = (next: ReviewDraft) => {
    latest.current = next;
    setDraft(next);
    keepReview(storage, account, covering, next);
  };
  const end = () => {
    latest.current = NOTHING_SAID;
    keepReview(storage, account, covering, null);
  };
  return { draft, latest, change, end };
}
