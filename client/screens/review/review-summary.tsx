import { useState } from 'react';
import { Link } from 'react-router';
import type { ReviewView } from '#domain/contract/review-views';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Confirm } from '../../parts/confirm.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { TextArea } from '../../parts/text-area.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { outcomeOf, type ReviewDraft } from './review-draft.ts';
import { SaidList } from './said-list.tsx';
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
  const outcome = outcomeOf(draft, lines);
  const { seen, waived, missing, open } = outcome;
  const own = fourEyes ? lines.filter((line) => line.own) : [];
  const { release, refuse } = useConclusion(review, draft, outcome, onSaid);
  const [asks, setAsks] = useState(false);
  if (!mayAnswer) return <p>{t('hold.review.endOfList')}</p>;
  const isAlone = own.length > 0 || (fourEyes && review.ownReady);
  const mayRelease = open.length === 0 && missing.length === 0 && !isAlone;
  const mayRefuse = missing.length > 0 || draft.note.trim() !== '';
  const go = { onGoTo };
  return (
    <div className="stack">
      <h2>{t('hold.review.end.title')}</h2>
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
      <TextArea
        label={t('hold.review.end.note')}
        value={draft.note}
        onChange={onNote}
        rows={3}
        maxLength={2000}
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
          <Button look="act" isPending={release.isPending} onPress={() => setAsks(true)}>
            {t('hold.review.end.release')}
          </Button>
        ) : null}
        {mayRefuse ? (
          <Button look="danger" isPending={refuse.isPending} onPress={() => refuse.mutate(undefined)}>
            {t('hold.review.end.refuse')}
          </Button>
        ) : null}
      </div>
      <Confirm
        title={t('hold.review.end.askTitle', { name: review.covering.name })}
        text={t('hold.review.end.ask')}
        yes={t('hold.review.end.yes')}
        isOpen={asks && mayRelease}
        isPending={release.isPending}
        error={null}
        onYes={() => {
          setAsks(false);
          release.mutate(undefined);
        }}
        onClose={() => setAsks(false)}
      />
    </div>
  );
}
