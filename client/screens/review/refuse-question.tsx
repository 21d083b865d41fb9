import type { ReviewLineView } from '#domain/contract/review-views';
import { useWords } from '../../i18n/use-words.ts';
import { Confirm } from '../../parts/confirm.tsx';
import type { DoubtedHere } from './doubted-here.ts';
import { Doubted } from './outcome-lists.tsx';
import type { Outcome } from './review-draft.ts';
import { SaidList } from './said-list.tsx';

interface RefuseQuestionProps {
  covering: string;
  outcome: Pick<Outcome<ReviewLineView>, 'missing' | 'open'>;
  doubted: readonly DoubtedHere[];
  note: string;
  isOpen: boolean;
  isPending: boolean;
  onYes: () => void;
  onClose: () => void;
  onGoTo: (mark: string) => void;
}

/** What goes out with a refusal and what does not, and to whom, before it does. */
export function RefuseQuestion(props: RefuseQuestionProps) {
  const { t } = useWords();
  const { covering, outcome, doubted, note, onGoTo, ...asking } = props;
  const { missing, open } = outcome;
  return (
    <Confirm
      {...asking}
      title={t('hold.review.end.refuseTitle', { name: covering })}
      text={t('hold.review.end.refuseAsk')}
      yes={t('hold.review.end.refuseYes')}
      error={null}
    >
      <div className="review-refusal">
        {missing.length === 0 ? <p>{t('hold.review.end.noneMissing')}</p> : null}
        <SaidList
          title={t('hold.review.end.missing', { count: missing.length })}
          said={missing.map(({ line, note: words }) => ({
            mark: line.mark,
            words: words === '' ? t('hold.review.end.noWords') : words,
          }))}
          onGoTo={onGoTo}
        />
        {note === '' ? null : <p className="review-said">{t('hold.review.end.withNote', { note })}</p>}
        <Doubted doubted={doubted} onGoTo={onGoTo} />
        <SaidList
          title={t('hold.review.end.notIn', { count: open.length })}
          said={open.map(({ mark }) => ({ mark, words: '' }))}
          onGoTo={onGoTo}
        />
      </div>
    </Confirm>
  );
}
