import { Link } from 'react-router';
import type { DayView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { StatementList } from '../ledger/statement-list.tsx';
import { closedAs } from './closed-as.ts';
import { DayNotes } from './day-notes.tsx';
import { DayPhotos } from './day-photos.tsx';

export function DayContent({ day }: { day: DayView }) {
  const { t } = useWords();
  return (
    <>
      {day.closings.length > 0 ? <DayClosings closings={day.closings} /> : null}
      <section className="section">
        <h2>{t('days.day.photos')}</h2>
        {day.photos.length === 0 ? (
          <p className="soft">{t('days.day.photosNone')}</p>
        ) : (
          <DayPhotos photos={day.photos} />
        )}
      </section>
      <DayNotes day={day} />
      <section className="section">
        <h2>{t('days.day.changes')}</h2>
        {day.changes.length === 0 ? (
          <p className="soft">{t('days.day.changesNone')}</p>
        ) : (
          <StatementList entries={day.changes} label={t('days.day.changes')} isOneDay />
        )}
      </section>
    </>
  );
}

function DayClosings({ closings }: { closings: DayView['closings'] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  return (
    <section className="section">
      <h2>{t('days.day.closings')}</h2>
      <ul className="closings plain-list">
        {closings.map(({ id, name, closed, phase }) => (
          <li key={id}>
            <Link to={`/houses/${house}/coverings/${id}`}>{name}</Link>
            <span>{t(closed ? `days.day.closed.${closedAs(phase)}` : 'days.day.planned')}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
