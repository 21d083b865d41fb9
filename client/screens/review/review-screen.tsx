import { Link, useParams } from 'react-router';
import { mayAct } from '#domain/contract/acts';
import type { ReviewView } from '#domain/contract/review-views';
import { linesToRelease } from '#domain/record/release';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Notice } from '../../parts/notice.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { HoldWord } from '../coverings/hold-word.tsx';
import '../report/report.css';
import { Review } from './review.tsx';
import { useReview } from './use-review.ts';
import './review.css';

/** What a covering will hide, member by member, with the evidence for it; an inspector answers for each. */
export function ReviewScreen() {
  const { t } = useWords();
  const { id: house, role } = useHouse();
  const { covering = '' } = useParams();
  const query = useReview(house, covering);
  const name = query.data?.covering.name;
  return (
    <Page
      title={name === undefined ? t('hold.review.title') : t('hold.review.titleOf', { name })}
      breadcrumb={[
        { to: `/houses/${house}/coverings`, label: t('common.nav.coverings') },
        ...(name === undefined ? [] : [{ to: `/houses/${house}/coverings/${covering}`, label: name }]),
      ]}
    >
      <QueryState query={query}>
        {(review) => (
          <>
            <Standing review={review} />
            {review.lines.length === 0 ? <p className="soft">{t('coverings.one.hidesNothing')}</p> : null}
            <Review
              key={covering}
              review={{ ...review, lines: linesToRelease(review.lines) }}
              mayAnswer={mayAct(role, 'review') && isReady(review)}
            />
          </>
        )}
      </QueryState>
    </Page>
  );
}

const isReady = ({ covering: { hold, closed } }: ReviewView) => hold.state === 'ready' && closed === null;

/** Where it stands; where nobody can answer now, why. */
function Standing({ review }: { review: ReviewView }) {
  const { t } = useWords();
  const { id: house, role } = useHouse();
  const { id, closed, hold } = review.covering;
  if (isReady(review))
    return (
      <>
        <ReadyWords hold={hold} />
        {mayAct(role, 'review') ? (
          <p className="soft">{t('hold.review.kept')}</p>
        ) : (
          <Notice>{t('hold.review.readOnly')}</Notice>
        )}
      </>
    );
  const { phase } = review.standing;
  const why = closed ? 'closed' : phase === 'released' || phase === 'outrun' ? phase : 'notReady';
  return (
    <Notice
      actions={
        <Link className="alone" to={`/houses/${house}/coverings/${id}`}>
          {t('hold.review.toCovering')}
        </Link>
      }
    >
      <HoldWord phase={phase} /> {t(`hold.review.${why}`)}
    </Notice>
  );
}

/** Who asks for the review, when, and with what note. */
function ReadyWords({ hold: { said } }: { hold: ReviewView['covering']['hold'] }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  if (!said) return null;
  const { at, by, note } = said;
  const asked = t('hold.said.ready', {
    when: formatInstant(at, zone, lang),
    who: by?.name ?? t('common.nobody'),
  });
  return (
    <p className="review-said">{note === '' ? asked : t('hold.review.withNote', { said: asked, note })}</p>
  );
}
