import { useState, type RefObject } from 'react';
import { Input, Label, TextField } from 'react-aria-components';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import type { Answer } from './review-draft.ts';

interface AnswerWordsProps {
  isGap: boolean;
  text: string;
  onText: (text: string) => void;
  /** For which others were accepted, to be said with one press. */
  reasons: readonly string[];
  words: RefObject<HTMLInputElement | null>;
  onAnswer: (answer: Answer) => void;
}

/** What needs words: why a gap may go all the same, or what is missing. */
export function AnswerWords({ isGap, text, onText, reasons, words, onAnswer }: AnswerWordsProps) {
  const { t } = useWords();
  const [isShort, setIsShort] = useState(false);
  const missing = () => onAnswer({ is: 'missing', note: text.trim().slice(0, NOTE_LIMIT) });
  const accept = () => {
    if (!isGap) return missing();
    setIsShort(text.trim() === '');
    if (text.trim() !== '') onAnswer({ is: 'waived', reason: text.trim() });
  };
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        accept();
      }}
    >
      {reasons.length > 0 ? (
        <ul className="row plain-list" aria-label={t('hold.review.lastReasons')}>
          {reasons.map((reason, i) => (
            <li key={reason}>
              <Button onPress={() => onAnswer({ is: 'waived', reason })}>
                {t('hold.review.acceptAs', { number: i + 1, reason })}
              </Button>
            </li>
          ))}
        </ul>
      ) : null}
      <TextField
        className="field"
        value={text}
        onChange={onText}
        maxLength={isGap ? 1000 : NOTE_LIMIT}
        isInvalid={isShort}
      >
        <Label className="field-label">{t(isGap ? 'hold.review.why' : 'hold.review.whatLacks')}</Label>
        <Input ref={words} className="field-input" />
      </TextField>
      {isShort ? (
        <p role="alert" className="field-error">
          {t('hold.review.needReason')}
        </p>
      ) : null}
      <div className="row">
        {isGap ? (
          <Button look="act" type="submit">
            {t('hold.review.accept')}
          </Button>
        ) : null}
        <Button onPress={missing}>{t('hold.review.missing')}</Button>
      </div>
    </form>
  );
}

/** Of what a refusal says of one member. */
const NOTE_LIMIT = 500;
