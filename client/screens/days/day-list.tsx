import { Link } from 'react-router';
import type { DaySummaryView } from '#domain/contract/views';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { useHouse } from '../../shell/use-house.ts';

const COUNTED = ['photos', 'tags', 'statements', 'notes'] as const;

/** The newest day first. */
export function DayList({ days }: { days: readonly DaySummaryView[] }) {
  const { t, lang } = useWords();
  const { id: house, counts } = useHouse();
  const newest = days.toSorted((a, b) => b.day.localeCompare(a.day));
  return (
    <>
      {counts.members === 0 || counts.photos === 0 ? <FirstSteps /> : null}
      <ol className="day-list plain-list" aria-label={t('days.days')}>
        {newest.map((day) => (
          <li key={day.day}>
            <Link to={`/houses/${house}/days/${day.day}`}>{formatDay(day.day, lang)}</Link>
            <span className="day-counts">
              {COUNTED.filter((what) => day[what] > 0).map((what) => (
                <span key={what}>{t(`common.count.${what}`, { count: day[what] })}</span>
              ))}
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}

/** A fresh house: what to do next. */
function FirstSteps() {
  const { t } = useWords();
  const { id: house, counts } = useHouse();
  const steps = (
    <>
      {counts.members === 0 ? (
        <LinkButton look="act" to={`/houses/${house}/schedule`}>
          {t('days.loadSchedule')}
        </LinkButton>
      ) : null}
      {counts.photos === 0 ? (
        <LinkButton look={counts.members === 0 ? 'plain' : 'act'} to={`/houses/${house}/photos`}>
          {t('days.sendPhotos')}
        </LinkButton>
      ) : null}
    </>
  );
  return <EmptyState title={t('days.daysNoneText')} action={steps} />;
}
