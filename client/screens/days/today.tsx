import { Suspense, lazy, useState } from 'react';
import type { JournalView } from '#domain/contract/journal-views';
import { useSession } from '../../api/use-session.ts';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button, LinkButton } from '../../parts/button.tsx';
import { Spinner } from '../../parts/spinner.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { BriefDay } from './brief-day.tsx';
import { BriefNotes } from './brief-notes.tsx';

/** With its field it is a good part of what the front page would have to fetch. */
const OwnNote = lazy(async () => ({ default: (await import('./own-note.tsx')).OwnNote }));

/** Today so far, with the note that can be written here; and what was noted for days to come. */
export function Today({ journal: { today, ahead } }: { journal: JournalView }) {
  const { t, lang } = useWords();
  const { id: house } = useHouse();
  const me = useSession().data?.account?.id;
  const mayWrite = useMay('contribute');
  const [writes, setWrites] = useState(false);
  const own = today.notes.find(({ by }) => by?.id === me);
  return (
    <section className="section">
      <h2>{t('days.todayTitle', { day: formatDay(today.day, lang) })}</h2>
      <BriefDay day={today} />
      <BriefNotes day={today.day} notes={writes ? today.notes.filter((note) => note !== own) : today.notes} />
      {writes ? (
        <Suspense fallback={<Spinner />}>
          <OwnNote date={today.day} saved={own?.text ?? ''} />
        </Suspense>
      ) : null}
      <div className="row">
        {writes || !mayWrite ? null : (
          <Button onPress={() => setWrites(true)}>{own ? t('days.changeNote') : t('days.writeNote')}</Button>
        )}
        <LinkButton look="quiet" to={`/houses/${house}/days/${today.day}`}>
          {t('days.today')}
        </LinkButton>
      </div>
      {ahead.map(({ day, notes }) => (
        <div key={day}>
          <h3>{t('days.noted', { day: formatDay(day, lang) })}</h3>
          <BriefNotes day={day} notes={notes} />
        </div>
      ))}
    </section>
  );
}
