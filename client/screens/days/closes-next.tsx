import { Link } from 'react-router';
import type { JournalView, NextClosingsView } from '#domain/contract/journal-views';
import { firstOfKind } from '../../i18n/kind-label.ts';
import { useLexicon } from '../../shell/use-lexicon.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { useHouse, useHouseCounts, useMay } from '../../shell/use-house.ts';
import { DaysLeft } from '../coverings/days-left.tsx';
import { NextCovering } from './next-covering.tsx';

/** What closes next and what is missing for it: the list for whoever goes out with the camera. */
export function ClosesNext({ journal: { next, openCoverings, holds } }: { journal: JournalView }) {
  const { t } = useWords();
  const lexicon = useLexicon();
  const { id: house } = useHouse();
  const counts = useHouseCounts();
  const [mayPlan, mayAdd] = [useMay('record'), useMay('contribute')];
  if (openCoverings === 0) {
    const plan = mayPlan ? (
      <LinkButton to={`/houses/${house}/coverings/new`}>{t('days.plan')}</LinkButton>
    ) : null;
    const title = counts.coverings === 0 ? t('days.nextNone') : t('days.nextAllClosed');
    return <EmptyState title={title} action={plan} />;
  }
  const withReading = firstOfKind(
    next.gaps.flatMap(({ missing }) => missing),
    lexicon,
  );
  return (
    <>
      <Holds holds={holds} state="outrun" />
      <Holds holds={holds} state="ready" />
      <Holds holds={holds} state="refused" />
      {next.gaps.map((covering) => (
        <NextCovering key={covering.id} covering={covering} withReading={withReading} />
      ))}
      <Quiet label={t('days.later')} named={next.later} />
      <Quiet label={t('days.complete')} named={next.complete} />
      <Quiet label={t('days.hidesNothing')} named={next.hidesNothing} />
      {next.gaps.length > 0 ? (
        <div className="row">
          {mayAdd ? (
            <LinkButton look="act" to={`/houses/${house}/photos`}>
              {t('days.addPhotos')}
            </LinkButton>
          ) : null}
          <LinkButton to={`/houses/${house}/shots${daysOf(next.gaps)}`}>{t('common.toShots')}</LinkButton>
          <LinkButton to={`/houses/${house}/report?only=missing`}>{t('days.toPrint')}</LinkButton>
        </div>
      ) : null}
    </>
  );
}

/** So far ahead that the list holds what closes first; within a week unless it is later. */
function daysOf(gaps: NextClosingsView['gaps']): string {
  const days = Math.min(...gaps.map(({ daysLeft }) => daysLeft ?? Infinity));
  return days <= 7 ? '' : days <= 14 ? '?days=14' : '?days=all';
}

/** Coverings that wait for somebody, in one line: for an inspector, or for what was missing. */
function Holds({
  holds,
  state,
}: {
  holds: JournalView['holds'];
  state: JournalView['holds'][number]['state'];
}) {
  const { t } = useWords();
  const { id: house } = useHouse();
  const mayReview = useMay('review');
  const end = state === 'ready' && mayReview ? '/review' : '';
  const waiting = holds.filter((hold) => hold.state === state);
  if (waiting.length === 0) return null;
  return (
    <p className="quiet-line">
      <strong>{t(`days.hold.${state}`)}</strong>
      {waiting.map(({ id, name }) => (
        <Link key={id} className="line-link" to={`/houses/${house}/coverings/${id}${end}`}>
          {name}
        </Link>
      ))}
    </p>
  );
}

/** Coverings for which nobody has to go out now, in one line. */
function Quiet({ label, named }: { label: string; named: NextClosingsView['later'] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  if (named.coverings.length === 0) return null;
  return (
    <p className="quiet-line">
      <span>{label}</span>
      {named.coverings.map(({ id, name, daysLeft, counts }) => (
        <span key={id}>
          <Link className="line-link" to={`/houses/${house}/coverings/${id}`}>
            {name}
          </Link>{' '}
          <DaysLeft days={daysLeft} isCalm />
          {counts.gaps > 0 ? ` ${t('common.count.gaps', { count: counts.gaps })}` : null}
          {counts.waived > 0 ? ` ${t('report.count.waived', { count: counts.waived })}` : null}
        </span>
      ))}
      {named.more > 0 ? (
        <Link className="line-link" to={`/houses/${house}/coverings`}>
          {t('days.moreCoverings', { count: named.more })}
        </Link>
      ) : null}
    </p>
  );
}
