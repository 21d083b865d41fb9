import { useRef, useState } from 'react';
import type { ReviewView } from '#domain/contract/review-views';
import { needsWaiver } from '#domain/record/release';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { AnswerBar } from './answer-bar.tsx';
import { DoubtDialog } from './doubt-dialog.tsx';
import { evidenceOf } from './evidence-of.ts';
import { KeysLine } from './keys-line.tsx';
import { MemberList } from './member-list.tsx';
import { MemberView } from './member-view.tsx';
import { useReviewKeys, type ReviewOrder } from './review-keys.ts';
import { answerOf, hasChanged, nextOpen, say, type Answer } from './review-draft.ts';
import { ReviewSummary } from './review-summary.tsx';
import { useKeptReview } from './use-kept-review.ts';
import { useNextPictures } from './use-next-pictures.ts';

export interface ReviewProps {
  review: ReviewView;
  mayAnswer: boolean;
}

/** One member after the other, and at the end what the answers come to. */
export function Review({ review, mayAnswer }: ReviewProps) {
  const { t } = useWords();
  const { lines } = review;
  const { draft, latest, change, end } = useKeptReview(review.covering.id);
  const [at, setAt] = useState<string | null>(
    () => (mayAnswer ? nextOpen(draft, lines, null) : lines[0]?.mark) ?? null,
  );
  const [shown, setShown] = useState(0);
  const [doubted, setDoubted] = useState<string | null>(null);
  const member = useRef<HTMLElement>(null);
  const words = useRef<HTMLInputElement>(null);
  const place = lines.findIndex(({ mark }) => mark === at);
  const line = lines[place];
  const evidence = line ? evidenceOf(review, line) : [];
  const record = evidence[Math.min(shown, evidence.length - 1)];
  useNextPictures(review, place);
  /** Null: to the end. */
  const goTo = (mark: string | null) => {
    setAt(mark);
    setShown(0);
    member.current?.focus({ preventScroll: true });
    const seen = member.current?.getBoundingClientRect();
    // All of it in sight, so that nobody scrolls at each member.
    if (seen && (seen.top < 0 || seen.bottom > window.innerHeight)) member.current?.scrollIntoView();
  };
  const answer = (given: Answer) => {
    if (!line || !mayAnswer) return;
    const next = say(latest.current, line, given);
    change(next);
    goTo(nextOpen(next, lines, line.mark));
  };
  const turn = (by: 1 | -1) => {
    const from = place === -1 ? lines.length : place;
    goTo(lines[Math.max(0, from + by)]?.mark ?? null);
  };
  const obey = (order: ReviewOrder) => {
    switch (order.do) {
      case 'seen':
        if (line && !needsWaiver(line)) answer({ is: 'seen' });
        return;
      case 'missing':
        return answer({ is: 'missing', note: words.current?.value.trim() ?? '' });
      case 'reason': {
        const reason = latest.current.reasons[order.which];
        if (line && needsWaiver(line) && reason !== undefined) answer({ is: 'waived', reason });
        return;
      }
      case 'words': {
        const folded = words.current?.closest('details');
        if (folded) folded.open = true;
        return words.current?.focus();
      }
      case 'doubt':
        if (mayAnswer && record && record.tag.state === 'standing') setDoubted(record.tag.id);
        return;
      case 'record':
        return setShown(evidence.length === 0 ? 0 : (shown + 1) % evidence.length);
      case 'turn':
        return turn(order.by);
      case 'open':
        return goTo(nextOpen(latest.current, lines, at));
      case 'end':
        return goTo(null);
    }
  };
  useReviewKeys(obey);
  return (
    <div className="review">
      <MemberList lines={lines} draft={draft} at={at} mayAnswer={mayAnswer} onChoose={goTo} />
      <section ref={member} className="review-member" tabIndex={-1}>
        {line ? (
          <>
            {mayAnswer && hasChanged(draft, line) ? <Notice>{t('hold.review.changed')}</Notice> : null}
            <MemberView
              key={line.mark}
              line={line}
              place={place}
              of={lines.length}
              evidence={evidence}
              shown={record}
              fourEyes={review.fourEyes}
              onShow={setShown}
              onDoubt={mayAnswer ? setDoubted : null}
            />
            <AnswerBar
              key={`answer ${line.mark}`}
              line={line}
              draft={draft}
              answer={answerOf(draft, line)}
              mayAnswer={mayAnswer}
              words={words}
              onAnswer={answer}
              onTurn={turn}
              onEnd={() => goTo(null)}
            />
            <KeysLine mayAnswer={mayAnswer} />
          </>
        ) : (
          <ReviewSummary
            review={review}
            draft={draft}
            mayAnswer={mayAnswer}
            onNote={(note) => change({ ...latest.current, note })}
            onGoTo={goTo}
            onSaid={end}
          />
        )}
      </section>
      {doubted === null ? null : <DoubtDialog tag={doubted} onClose={() => setDoubted(null)} />}
    </div>
  );
}
