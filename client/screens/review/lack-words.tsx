import type { RefObject } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { AnswerName } from './answer-name.tsx';
import { WordsField } from './words-field.tsx';

interface LackWordsProps {
  mark: string;
  text: string;
  onText: (text: string) => void;
  field: RefObject<HTMLTextAreaElement | null>;
  onAnswer: (note: string) => void;
  /** The label is heard only: what folds it away says the same. */
  isFolded: boolean;
}

/** Of what a refusal says of one member. */
export const NOTE_LIMIT = 500;

/** What is missing of a member, if anybody wants to say it. */
export function LackWords({ mark, text, onText, field, onAnswer, isFolded }: LackWordsProps) {
  const { t } = useWords();
  return (
    <form
      className="review-words"
      onSubmit={(event) => {
        event.preventDefault();
        onAnswer(text.trim());
      }}
    >
      <WordsField
        isLabelHeard={isFolded}
        label={t('hold.review.whatLacks')}
        text={text}
        onText={onText}
        maxLength={NOTE_LIMIT}
        field={field}
      />
      <Button type="submit">
        <AnswerName mark={mark}>{t('hold.review.missing')}</AnswerName>
      </Button>
    </form>
  );
}
