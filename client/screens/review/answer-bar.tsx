import { useState, type RefObject } from 'react';
import type { ReviewLineView } from '#domain/contract/review-views';
import { needsWaiver } from '#domain/record/release';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { AnswerSign } from './answer-sign.tsx';
import { AnswerWords } from './answer-words.tsx';
import type { Answer, ReviewDraft } from './review-draft.ts';

interface AnswerBarProps {
  line: ReviewLineView;
  draft: ReviewDraft;
  answer: Answer | null;
  mayAnswer: boolean;
  words: RefObject<HTMLInputElement | null>;
  onAnswer: (answer: Answer) => void;
  onTurn: (by: 1 | -1) => void;
  onEnd: () => void;
}

/** What is said of the member that is looked at, and the way to the others. */
export function AnswerBar(props: AnswerBarProps) {
  const { line, draft, answer, mayAnswer, words, onAnswer, onTurn, onEnd } = props;
  const { t } = useWords();
  const isGap = needsWaiver(line);
  const [text, setText] = useState(() => wordsOf(answer));
  const form = (
    <AnswerWords
      isGap={isGap}
      text={text}
      onText={setText}
      reasons={isGap ? draft.reasons : []}
      words={words}
      onAnswer={onAnswer}
    />
  );
  return (
    <>
      {mayAnswer && answer ? (
        <p className="row">
          <AnswerSign is={answer.is} />
          {answer.is === 'seen' ? null : <span>{wordsOf(answer)}</span>}
        </p>
      ) : null}
      {mayAnswer && isGap ? form : null}
      {mayAnswer && !isGap ? (
        <details className="disclosure">
          <summary>{t('hold.review.lacks')}</summary>
          {form}
        </details>
      ) : null}
      <div className="review-answer row">
        {mayAnswer && !isGap ? (
          <Button look="act" onPress={() => onAnswer({ is: 'seen' })}>
            {t('hold.review.seen')}
          </Button>
        ) : null}
        <Button onPress={() => onTurn(-1)}>{t('hold.review.back')}</Button>
        <Button onPress={() => onTurn(1)}>{t('hold.review.forth')}</Button>
        <Button onPress={onEnd}>{t('hold.review.toEnd')}</Button>
      </div>
    </>
  );
}

function wordsOf(answer: Answer | null): string {
  if (answer?.is === 'waived') return answer.reason;
  return answer?.is === 'missing' ? answer.note : '';
}
