import { Link } from 'react-router';
import type { ReviewLineView } from '#domain/contract/review-views';
import { stretchWords } from '../../i18n/stretch-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { Extent, LineWords } from '../report/line-row.tsx';
import { AnswerSign } from './answer-sign.tsx';
import type { Answer } from './review-draft.ts';

interface MemberHeadProps {
  line: ReviewLineView;
  /** Among the members, from 0. */
  place: number;
  of: number;
  answer: Answer | null;
}

/** Which member is looked at, and what has been said of it. */
export function MemberHead({ line: { mark, kind, place: where }, place, of, answer }: MemberHeadProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  return (
    <div className="review-head">
      <h2 className="review-mark">
        <Link className="alone" to={`/houses/${house}/members/${encodeURIComponent(mark)}`}>
          {mark}
        </Link>{' '}
        <span className="review-kind">
          <KindName kind={kind} />
        </span>
      </h2>
      <p className="soft" role="status">
        <span className="out-of-sight">{mark}, </span>
        {t('hold.review.place', { place: place + 1, of })}
        {where === '' ? null : ` · ${where}`}
      </p>
      {answer ? <AnswerSign is={answer.is} /> : null}
    </div>
  );
}

/** What of a member is hidden, what is asked for, and whether that is on record. */
export function MemberFacts({ line, fourEyes }: { line: ReviewLineView; fourEyes: boolean }) {
  const { t } = useWords();
  return (
    <dl className="review-facts">
      <div>
        <dt>{t('hold.review.hidden')}</dt>
        <dd>
          <HiddenPart line={line} />
        </dd>
      </div>
      <div>
        <dt>{t('report.columns.least')}</dt>
        <dd>
          <StageName stage={line.least} />
        </dd>
      </div>
      <div>
        <dt>{t('report.columns.state')}</dt>
        <dd>
          <LineWords line={line} />
          {line.own && fourEyes ? <span className="report-miss act-text">{t('hold.review.own')}</span> : null}
        </dd>
      </div>
    </dl>
  );
}

/** A part without lines at its ends, as of a post, is told in metres. */
function HiddenPart({ line }: { line: ReviewLineView }) {
  const { t, lang } = useWords();
  const { hidden, whole } = line;
  const hasLines = Boolean(hidden?.fromMark && hidden.toMark && hidden.fromMark !== hidden.toMark);
  return (
    <>
      {whole ? t('hold.review.whole') : null}
      {hidden && !whole && !hasLines ? stretchWords(t, lang, hidden) : null}
      <Extent line={line} />
    </>
  );
}
