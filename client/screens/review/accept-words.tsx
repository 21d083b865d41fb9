import { useState, type RefObject } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { AnswerName } from './answer-name.tsx';
import { WordsField } from './words-field.tsx';

interface AcceptWordsProps {
  mark: string;
  text: string;
  onText: (text: string) => void;
  /** For which others were accepted, to be said with one press. */
  reasons: readonly string[];
  field: RefObject<HTMLTextAreaElement | null>;
  onAnswer: (reason: string) => void;
}

/** Why a gap may go all the same. */
export function AcceptWords({ mark, text, onText, reasons, field, onAnswer }: AcceptWordsProps) {
  const { t } = useWords();
  const [isShort, setIsShort] = useState(false);
  const reason = text.trim();
  return (
    <>
      <form
        className="review-words review-words-long"
        onSubmit={(event) => {
          event.preventDefault();
          setIsShort(reason === '');
          if (reason !== '') onAnswer(reason);
        }}
      >
        <WordsField
          label={t('hold.review.why')}
          text={text}
          onText={onText}
          maxLength={1000}
          error={isShort && reason === '' ? t('hold.review.needReason') : null}
          field={field}
        />
        <Button type="submit">
          <AnswerName mark={mark}>{t('hold.review.accept')}</AnswerName>
        </Button>
      </form>
      {reasons.length > 0 ? (
        <ul className="row plain-list review-reasons" aria-label={t('hold.review.lastReasons')}>
          {reasons.map((before, i) => (
            <li key={before}>
              <Button onPress={() => onAnswer(before)}>
                <span className="out-of-sight">{mark}</span>
                <span className="review-reason">
                  {t('hold.review.acceptAs', { number: i + 1, reason: before })}
                </span>
              </Button>
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
}
