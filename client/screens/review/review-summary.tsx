import { useRef, useState } from 'react';
import { Link } from 'react-router';
import type { ReviewView } from '#domain/contract/review-views';
import { useSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Confirm } from '../../parts/confirm.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { doubtedHere } from './doubted-here.ts';
import { OutcomeLists } from './outcome-lists.tsx';
import { RefuseQuestion } from './refuse-question.tsx';
import { hasWords, outcomeOf, type ReviewDraft } from './review-draft.ts';
import { useConclusion } from './use-conclusion.ts';

interface ReviewSummaryProps {
  review: ReviewView;
  draft: ReviewDraft;
  mayAnswer: boolean;
  onNote: (note: string) => void;
  onGoTo: (mark: string) => void;
  onSaid: { released: () => void; refused: () => void };
}

/** What the answers come to: a release, or a refusal with what is missing. */
export function ReviewSummary({ review, draft, mayAnswer, onNote, onGoTo, onSaid }: ReviewSummaryProps) {
  const { t } = useWords();
  const { lines, fourEyes } = review;
  const { id: house } = useHouse();
  const account = useSession().data?.account?.id ?? '';
  const outcome = outcomeOf(draft, lines);
  const { missing, open } = outcome;
  const own = fourEyes ? lines.filter((line) => line.own) : [];
  const lacking = new Set<string>(missing.map(({ line }) => line.mark));
  const doubted = doubtedHere(review, draft, account).filter(({ mark }) => !lacking.has(mark));
  const { release, refuse } = useConclusion(review, draft, outcome, onSaid);
  const [asks, setAsks] = useState<'release' | 'refuse' | null>(null);
  const [lacksWords, setLacksWords] = useState(false);
  const note = useRef<HTMLTextAreaElement>(null);
  if (!mayAnswer) return <p>{t('hold.review.endOfList')}</p>;
  const isAlone = own.length > 0 || (fourEyes && review.ownReady);
  const mayRelease = open.length === 0 && missing.length === 0 && !isAlone;
  const mayRefuse = missing.length > 0 || draft.note.trim() !== '';
  const isTold = hasWords(draft, outcome);
  const askToRefuse = () => {
    setLacksWords(!isTold);
    if (isTold) setAsks('refuse');
    else note.current?.focus();
  };
  const answerBy = (say: () => void) => () => {
    setAsks(null);
    say();
  };
  return (
    <div className="stack">
      <h2>{t('hold.review.end.title')}</h2>
      <OutcomeLists outcome={outcome} doubted={doubted} own={own} onGoTo={onGoTo} />
      <TextArea
        label={t('hold.review.end.note')}
        value={draft.note}
        onChange={onNote}
        rows={3}
        maxLength={2000}
        error={lacksWords && !isTold ? t('hold.review.end.needWords') : null}
        field={note}
      />
      <p className="wall-caution">{t('hold.review.end.caution')}</p>
      <ProblemNotice error={release.error ?? refuse.error} keepsTyped />
      {isAlone ? (
        <p>
          {t('hold.review.end.alone')}{' '}
          <Link to={`/houses/${house}/settings`}>{t('hold.review.end.toRule')}</Link>
        </p>
      ) : null}
      {open.length > 0 ? <p className="soft">{t('hold.review.end.nothingYet')}</p> : null}
      {mayRefuse ? null : <p className="soft">{t('hold.review.end.toRefuse')}</p>}
      <div className="row">
        {mayRelease ? (
          <Button look="act" isPending={release.isPending} onPress={() => setAsks('release')}>
            {t('hold.review.end.release')}
          </Button>
        ) : null}
        {mayRefuse ? (
          <Button look="danger" isPending={refuse.isPending} onPress={askToRefuse}>
            {t('hold.review.end.refuse')}
          </Button>
        ) : null}
      </div>
      <Confirm
        title={t('hold.review.end.askTitle', { name: review.covering.name })}
        text={t('hold.review.end.ask')}
        yes={t('hold.review.end.yes')}
        isOpen={asks === 'release' && mayRelease}
        isPending={release.isPending}
        error={null}
        onYes={answerBy(() => release.mutate(undefined))}
        onClose={() => setAsks(null)}
      />
      <RefuseQuestion
        covering={review.covering.name}
        outcome={outcome}
        doubted={doubted}
        note={draft.note.trim()}
        isOpen={asks === 'refuse' && isTold}
        isPending={refuse.isPending}
        onYes={answerBy(() => refuse.mutate(undefined))}
        onClose={() => setAsks(null)}
        onGoTo={onGoTo}
      />
    </div>
  );
}
