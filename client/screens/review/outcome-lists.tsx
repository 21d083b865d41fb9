import type { ReviewLineView } from '#domain/contract/review-views';
import { useWords } from '../../i18n/use-words.ts';
import type { DoubtedHere } from './doubted-here.ts';
import type { Outcome } from './review-draft.ts';
import { SaidList } from './said-list.tsx';

interface OutcomeListsProps {
  outcome: Outcome<ReviewLineView>;
  doubted: readonly DoubtedHere[];
  /** Members that somebody else must release. */
  own: readonly ReviewLineView[];
  onGoTo: (mark: string) => void;
}

/** Who among the members was answered for, and how. */
export function OutcomeLists({ outcome, doubted, own, onGoTo }: OutcomeListsProps) {
  const { t } = useWords();
  const { seen, waived, missing, open } = outcome;
  const go = { onGoTo };
  return (
    <>
      <h3>{t('hold.review.end.seen', { count: seen.length })}</h3>
      <SaidList
        {...go}
        title={t('hold.review.end.waived', { count: waived.length })}
        said={waived.map(({ line, reason }) => ({ mark: line.mark, words: reason }))}
      />
      <SaidList
        {...go}
        title={t('hold.review.end.missing', { count: missing.length })}
        said={missing.map(({ line, note }) => ({ mark: line.mark, words: note }))}
      />
      <Doubted {...go} doubted={doubted} />
      <SaidList
        {...go}
        title={t('hold.review.end.open', { count: open.length })}
        said={open.map(({ mark }) => ({ mark, words: '' }))}
      />
      <SaidList
        {...go}
        title={t('hold.review.end.own', { count: own.length })}
        said={own.map(({ mark }) => ({ mark, words: '' }))}
      />
    </>
  );
}

/** Members whose record was doubted but of which a refusal would say nothing. */
export function Doubted({ doubted, onGoTo }: Pick<OutcomeListsProps, 'doubted' | 'onGoTo'>) {
  const { t } = useWords();
  return (
    <SaidList
      title={t('hold.review.end.doubted', { count: doubted.length })}
      said={doubted.map(({ mark, reason }) => ({ mark, words: reason }))}
      onGoTo={onGoTo}
    />
  );
}
