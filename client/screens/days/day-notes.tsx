import type { DayView } from '#domain/contract/views';
import { useSession } from '../../api/use-session.ts';
import { formatInstant } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { IfMay } from '../../shell/if-may.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { OwnNote } from './own-note.tsx';

export function DayNotes({ day }: { day: DayView }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const me = useSession().data?.account?.id;
  const own = day.notes.find((note) => note.by?.id === me);
  const others = day.notes.filter((note) => note !== own && note.text.trim() !== '');
  return (
    <section className="section">
      <h2>{t('days.day.notes')}</h2>
      {others.map((note) => (
        <article key={`${note.by?.id} ${note.at}`}>
          <p className="note-text">{note.text}</p>
          <p className="soft">
            {t('days.day.noteBy', {
              name: note.by?.name ?? t('common.someone'),
              when: formatInstant(note.at, zone, lang),
            })}
          </p>
        </article>
      ))}
      <IfMay act="contribute">
        <OwnNote date={day.day} saved={own?.text ?? ''} />
      </IfMay>
    </section>
  );
}
