import { useState, type RefObject } from 'react';
import type { ReviewLineView } from '#domain/contract/review-views';
import { needsWaiver } from '#domain/record/release';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { AcceptWords } from './accept-words.tsx';
import { AnswerName } from './answer-name.tsx';
import { LackWords } from './lack-words.tsx';
import type { Offered } from './offered.ts';
import type { Answer } from './review-draft.ts';

export interface AnswerFields {
  readonly reason: RefObject<HTMLTextAreaElement | null>;
  readonly lacks: RefObject<HTMLTextAreaElement | null>;
}

interface AnswerBarProps {
  line: ReviewLineView;
  offered: Offered;
  /** For which others were accepted. */
  reasons: readonly string[];
  mayAnswer: boolean;
  /** Records of it that are to be looked at before it is seen. */
  unopened: number;
  fields: AnswerFields;
  onSeen: () => void;
  onAnswer: (answer: Answer) => void;
  onTurn: (by: 1 | -1) => void;
  onEnd: () => void;
}

/** What is said of the member that is looked at, and the way to the others. */
export function AnswerBar({ mayAnswer, onTurn, onEnd, ...answering }: AnswerBarProps) {
  const { t } = useWords();
  return (
    <div className="review-answer">
      {mayAnswer ? <Answering {...answering} /> : null}
      <div className="row">
        <Button onPress={() => onTurn(-1)}>{t('hold.review.back')}</Button>
        <Button onPress={() => onTurn(1)}>{t('hold.review.forth')}</Button>
        <Button onPress={onEnd}>{t('hold.review.toEnd')}</Button>
      </div>
    </div>
  );
}

type AnsweringProps = Pick<
  AnswerBarProps,
  'line' | 'offered' | 'reasons' | 'unopened' | 'fields' | 'onSeen' | 'onAnswer'
>;

function Answering({ line, offered, reasons, unopened, fields, onSeen, onAnswer }: AnsweringProps) {
  const { t } = useWords();
  // Null: untouched, and what is offered stands there, even where it comes only now.
  const [reason, setReason] = useState<string | null>(null);
  const [lacks, setLacks] = useState<string | null>(null);
  const lacking = (
    <LackWords
      mark={line.mark}
      text={lacks ?? offered.lacks}
      onText={setLacks}
      field={fields.lacks}
      isFolded={!needsWaiver(line)}
      onAnswer={(note) => onAnswer({ is: 'missing', note })}
    />
  );
  if (needsWaiver(line))
    return (
      <>
        <AcceptWords
          mark={line.mark}
          text={reason ?? offered.reason}
          onText={setReason}
          reasons={reasons}
          field={fields.reason}
          onAnswer={(said) => onAnswer({ is: 'waived', reason: said })}
        />
        {lacking}
      </>
    );
  return (
    <>
      <Button look="act" onPress={onSeen}>
        <AnswerName mark={line.mark}>
          {unopened > 0 ? t('hold.review.nextRecord', { count: unopened }) : t('hold.review.seen')}
        </AnswerName>
      </Button>
      <details className="disclosure" open={offered.lacks !== ''}>
        <summary>{t('hold.review.lacks')}</summary>
        {lacking}
      </details>
    </>
  );
}
