import { Link } from 'react-router';
import type { BriefDayView, EarlierDaysView } from '#domain/contract/journal-views';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { dayLine } from './day-words.ts';
import { PhotoStrip } from './photo-strip.tsx';
import { useEarlierDays } from './use-earlier-days.ts';

/** The journal backwards, day by day; more of it comes when its end is in sight, or by the button there. */
export function EarlierDays({ earlier }: { earlier: EarlierDaysView }) {
  const { t } = useWords();
  const { days, hasMore, isLoading, error, loadMore, endRef } = useEarlierDays(earlier);
  if (days.length === 0) return null;
  return (
    <section className="section">
      <h2>{t('days.days')}</h2>
      <ol className="plain-list" aria-label={t('days.days')}>
        {days.map((day) => (
          <EarlierDay key={day.day} day={day} />
        ))}
      </ol>
      <ProblemNotice error={error} />
      {hasMore ? (
        <div className="row" ref={endRef}>
          <Button isPending={isLoading} onPress={loadMore}>
            {t('days.more')}
          </Button>
        </div>
      ) : null}
    </section>
  );
}

function EarlierDay({ day }: { day: BriefDayView }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const rest = day.photos - day.pictures.length;
  const written = formatDay(day.day, lang);
  const [note] = day.notes;
  return (
    <li className="day-row">
      <Link className="line-link" to={`/houses/${house}/days/${day.day}`}>
        {written}
      </Link>
      {day.pictures.length > 0 ? (
        <div className="day-pictures">
          <PhotoStrip photos={day.pictures} label={t('days.photosOf', { day: written })} size="small" />
          {rest > 0 ? <span className="soft">{t('days.morePhotos', { count: rest })}</span> : null}
        </div>
      ) : null}
      <p>
        {dayLine(t, lang, day)} {note ? <q className="soft">{`${note.text}${note.cut ? '…' : ''}`}</q> : null}
      </p>
    </li>
  );
}
