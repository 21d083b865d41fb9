import { Link } from 'react-router';
import type { BriefDayView } from '#domain/contract/journal-views';
import { daysBetween } from '#domain/record/days-between';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { BriefDay } from './brief-day.tsx';
import { BriefNotes } from './brief-notes.tsx';

export interface LastDayProps {
  day: BriefDayView;
  today: string;
}

/** Yesterday's work; where yesterday was empty, that of the last day that was not, and which day that was. */
export function LastDay({ day, today }: LastDayProps) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const isYesterday = daysBetween(day.day, today) === 1;
  return (
    <section className="section">
      <h2>{t(isYesterday ? 'days.yesterday' : 'days.lastDay', { day: formatDay(day.day, lang) })}</h2>
      <BriefDay day={day} />
      <BriefNotes day={day.day} notes={day.notes} />
      <p>
        <Link className="line-link" to={`/houses/${house}/days/${day.day}`}>
          {t('days.wholeDay')}
        </Link>
      </p>
    </section>
  );
}
