import type { ReactNode } from 'react';

/** What a button says of a member, after its mark; on a phone the mark, which stands at the top, is heard only. */
export function AnswerName({ mark, children }: { mark: string; children: ReactNode }) {
  return (
    <>
      <span className="review-answer-of">{mark}</span> {children}
    </>
  );
}
