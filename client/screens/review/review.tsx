import { useRef, useState } from 'react';
import type { ReviewView } from '#domain/contract/review-views';
import { needsWaiver } from '#domain/record/release';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { AnswerBar } from './answer-bar.tsx';
import { DoubtDialog } from './doubt-dialog.tsx';
import { EvidenceChoice } from './evidence-choice.tsx';
import { evidenceOf, type Shown } from './evidence-of.ts';
import { EvidenceWords, mayDoubt } from './evidence-words.tsx';
import { useKeptOrder } from './kept-order.ts';
import { KeysLine } from './keys-line.tsx';
import { LargePicture } from './large-picture.tsx';
import { LastRefusal } from './last-refusal.tsx';
import { MemberList } from './member-list.tsx';
import { MemberFacts, MemberHead } from './member-view.tsx';
import { offeredOf } from './offered.ts';
import { recordsToSee } from './records-to-see.ts';
import { Pictures } from './pictures.tsx';
import { useReviewKeys, type ReviewOrder } from './review-keys.ts';
import { answerOf, hasChanged, nextOpen, say, type Answer } from './review-draft.ts';
import { ReviewSummary } from './review-summary.tsx';
import { SaidBefore } from './said-before.tsx';
import { useInSight } from './use-in-sight.ts';
import { useKeptReview } from './use-kept-review.ts';
import { useNextPictures } from './use-next-pictures.ts';

export interface ReviewProps {
  review: ReviewView;
  mayAnswer: boolean;
}

/** One member after the other, and at the end what the answers come to. */
export function Review({ review: asRead, mayAnswer }: ReviewProps) {
  const { t } = useWords();
  const lines = useKeptOrder(asRead.lines);
  const review = { ...asRead, lines };
  const { draft, latest, change, end } = useKeptReview(review);
  const [at, setAt] = useState<string | null>(
    () => (mayAnswer ? nextOpen(draft, lines, null) : lines[0]?.mark) ?? null,
  );
  const [shown, setShown] = useState(0);
  /** Of the member that is looked at, the tags whose pictures were. */
  const [opened, setOpened] = useState<readonly string[]>([]);
  const [isLarge, setIsLarge] = useState(false);
  const [doubted, setDoubted] = useState<Shown | null>(null);
  const { seen: member, show } = useInSight(mayAnswer && !hasMoreToRead(review));
  const fields = { reason: useRef<HTMLTextAreaElement>(null), lacks: useRef<HTMLTextAreaElement>(null) };
  const place = lines.findIndex(({ mark }) => mark === at);
  const line = lines[place];
  const evidence = line ? evidenceOf(review, line) : [];
  const record = evidence[Math.min(shown, evidence.length - 1)];
  const unopened = recordsToSee(evidence, line?.views ?? 1).filter(
    (one) => one !== record && !opened.includes(one.tag.id),
  );
  useNextPictures(review, place);
  /** Null: to the end. */
  const goTo = (mark: string | null) => {
    setAt(mark);
    setShown(0);
    setOpened([]);
    show();
  };
  const answer = (given: Answer) => {
    if (!line || !mayAnswer) return;
    const next = say(latest.current, line, given);
    change(next);
    goTo(nextOpen(next, lines, line.mark));
  };
  const showRecord = (which: number) => {
    if (record) setOpened([...opened, record.tag.id]);
    setShown(which);
  };
  /** Nobody has seen a member who has not opened the records that make it one. */
  const seen = () => {
    const [next] = unopened;
    if (next) showRecord(evidence.indexOf(next));
    else answer({ is: 'seen' });
  };
  const turn = (by: 1 | -1) => {
    const from = place === -1 ? lines.length : place;
    goTo(lines[Math.max(0, from + by)]?.mark ?? null);
  };
  const obey = (order: ReviewOrder) => {
    switch (order.do) {
      case 'seen':
        if (line && !needsWaiver(line)) seen();
        return;
      case 'missing':
        return answer({ is: 'missing', note: fields.lacks.current?.value.trim() ?? '' });
      case 'reason': {
        const reason = latest.current.reasons[order.which];
        if (line && needsWaiver(line) && reason !== undefined) answer({ is: 'waived', reason });
        return;
      }
      case 'words':
        return leadInto(fields.reason.current ?? fields.lacks.current);
      case 'lacks':
        return leadInto(fields.lacks.current);
      case 'doubt':
        if (mayAnswer && record && mayDoubt(record)) setDoubted(record);
        return;
      case 'large':
        return setIsLarge(record !== undefined);
      case 'record':
        return showRecord(evidence.length === 0 ? 0 : (shown + 1) % evidence.length);
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
    <>
      <LastRefusal review={review} onGoTo={goTo} />
      {mayAnswer && line && hasMoreToRead(review) ? (
        <div className="row">
          <Button look="act" onPress={() => goTo(line.mark)}>
            {t('hold.review.begin', { mark: line.mark })}
          </Button>
        </div>
      ) : null}
      <div className="review">
        <MemberList lines={lines} draft={draft} at={at} mayAnswer={mayAnswer} onChoose={goTo} />
        <section ref={member} className={line ? 'review-member review-one' : 'review-member'} tabIndex={-1}>
          {line ? (
            <>
              <MemberHead
                line={line}
                place={place}
                of={lines.length}
                answer={mayAnswer ? answerOf(draft, line) : null}
              />
              <div className={record ? 'review-look' : 'review-look review-look-bare'}>
                {record ? (
                  <Pictures key={record.tag.id} shown={record} onLarge={() => setIsLarge(true)} />
                ) : null}
                <div className="review-told">
                  {mayAnswer && hasChanged(draft, line) ? <Notice>{t('hold.review.changed')}</Notice> : null}
                  <SaidBefore line={line} review={review} />
                  <MemberFacts line={line} fourEyes={review.fourEyes} />
                  {record ? (
                    <EvidenceWords
                      shown={record}
                      line={line}
                      onDoubt={mayAnswer ? () => setDoubted(record) : null}
                    />
                  ) : null}
                  <EvidenceChoice evidence={evidence} shown={record} onShow={showRecord} />
                </div>
              </div>
              <AnswerBar
                key={line.mark}
                line={line}
                offered={offeredOf({ ...review, draft }, line, evidence)}
                reasons={draft.reasons}
                mayAnswer={mayAnswer}
                unopened={unopened.length}
                fields={fields}
                onSeen={seen}
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
              onSaid={{ released: end, refused: () => change({ ...latest.current, note: '' }) }}
            />
          )}
        </section>
      </div>
      {isLarge && record ? (
        <LargePicture tag={record.tag} fileName={record.fileName} onClose={() => setIsLarge(false)} />
      ) : null}
      {doubted === null ? null : (
        <DoubtDialog
          tag={doubted.tag}
          onSaid={(reason) => {
            const { id, mark } = doubted.tag;
            change({ ...latest.current, doubts: { ...latest.current.doubts, [mark]: { tag: id, reason } } });
          }}
          onClose={() => setDoubted(null)}
        />
      )}
    </>
  );
}

/** Above the first member. */
const hasMoreToRead = ({ lastRefusal, covering: { hold } }: ReviewView) =>
  lastRefusal !== null || Boolean(hold.said?.note);

function leadInto(field: HTMLTextAreaElement | null): void {
  const folded = field?.closest('details');
  if (folded) folded.open = true;
  field?.focus();
  // What stands there already is gone on with.
  field?.setSelectionRange(field.value.length, field.value.length);
}
