import { Link } from 'react-router';
import type { ReviewLineView } from '#domain/contract/review-views';
import { useWords } from '../../i18n/use-words.ts';
import { KindName } from '../../parts/kind-name.tsx';
import { StageName } from '../../parts/stage-name.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { Extent, LineWords } from '../report/line-row.tsx';
import { EvidenceChoice } from './evidence-choice.tsx';
import { EvidenceView } from './evidence-view.tsx';
import type { Shown } from './evidence-of.ts';

interface MemberViewProps {
  line: ReviewLineView;
  /** Among the members, from 0. */
  place: number;
  of: number;
  evidence: readonly Shown[];
  shown: Shown | undefined;
  fourEyes: boolean;
  onShow: (which: number) => void;
  onDoubt: ((tag: string) => void) | null;
}

/** One member: what of it is hidden, what is asked for, and what speaks for it. */
export function MemberView(props: MemberViewProps) {
  const { line, place, of, evidence, shown, fourEyes, onShow, onDoubt } = props;
  const { t } = useWords();
  const { id: house } = useHouse();
  const { mark, kind, least, own } = line;
  return (
    <>
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
          {line.place === '' ? null : ` · ${line.place}`}
        </p>
      </div>
      <dl className="review-facts">
        <div>
          <dt>{t('hold.review.hidden')}</dt>
          <dd>
            {line.hidden ? null : t('hold.review.whole')}
            <Extent line={line} />
          </dd>
        </div>
        <div>
          <dt>{t('report.columns.least')}</dt>
          <dd>
            <StageName stage={least} />
          </dd>
        </div>
        <div>
          <dt>{t('report.columns.state')}</dt>
          <dd>
            <LineWords line={line} />
            {own && fourEyes ? <span className="report-miss act-text">{t('hold.review.own')}</span> : null}
          </dd>
        </div>
      </dl>
      {shown ? <EvidenceView key={shown.tag.id} shown={shown} line={line} onDoubt={onDoubt} /> : null}
      <EvidenceChoice evidence={evidence} shown={shown} onShow={onShow} />
    </>
  );
}
