import { useEffect, useRef } from 'react';
import type { ReviewLineView } from '#domain/contract/review-views';
import { useWords } from '../../i18n/use-words.ts';
import { AnswerSign } from './answer-sign.tsx';
import { answerOf, hasChanged, outcomeOf, type ReviewDraft } from './review-draft.ts';

interface MemberListProps {
  lines: readonly ReviewLineView[];
  draft: ReviewDraft;
  at: string | null;
  mayAnswer: boolean;
  onChoose: (mark: string | null) => void;
}

/** All members with what has been said of each; on a phone folded away above the one that is looked at. */
export function MemberList({ lines, draft, at, mayAnswer, onChoose }: MemberListProps) {
  const { t } = useWords();
  const answered = lines.length - outcomeOf(draft, lines).open.length;
  const title = mayAnswer
    ? t('hold.review.answered', { answered, all: lines.length })
    : t('common.count.members', { count: lines.length });
  const list = useRef<HTMLDetailsElement>(null);
  // The list alone, not the page around it.
  useEffect(() => {
    const chosen = list.current?.querySelector<HTMLElement>('[aria-current]');
    if (list.current && chosen) list.current.scrollTop = chosen.offsetTop - list.current.clientHeight / 2;
  }, [at]);
  return (
    <details
      ref={list}
      className="review-list disclosure"
      open={window.matchMedia('(width > 56rem)').matches}
    >
      <summary>{title}</summary>
      <ol className="plain-list" aria-label={t('hold.review.members')}>
        {lines.map((line) => (
          <li key={line.mark}>
            <button
              type="button"
              className="review-choose"
              aria-current={line.mark === at ? 'true' : undefined}
              onClick={() => onChoose(line.mark)}
            >
              <strong>{line.mark}</strong>
              <Told line={line} draft={draft} mayAnswer={mayAnswer} />
            </button>
          </li>
        ))}
        <li>
          <button
            type="button"
            className="review-choose"
            aria-current={at === null ? 'true' : undefined}
            onClick={() => onChoose(null)}
          >
            {t('hold.review.toEnd')}
          </button>
        </li>
      </ol>
    </details>
  );
}

function Told({
  line,
  draft,
  mayAnswer,
}: Pick<MemberListProps, 'draft' | 'mayAnswer'> & { line: ReviewLineView }) {
  const { t } = useWords();
  const answer = answerOf(draft, line);
  if (mayAnswer && answer) return <AnswerSign is={answer.is} />;
  const isMissing = line.state === 'gap' || line.state === 'lost';
  const isChanged = mayAnswer && hasChanged(draft, line);
  return (
    <span className={isMissing || isChanged ? 'act-text' : 'soft'}>
      {isChanged ? t('hold.review.changedShort') : t(`report.state.${line.state}`)}
    </span>
  );
}
