import { Link } from 'react-router';
import type { BriefDayView } from '#domain/contract/journal-views';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

export interface BriefNotesProps {
  day: string;
  notes: BriefDayView['notes'];
}

/** Notes with who wrote them; the end of a long one stands on the page of its day. */
export function BriefNotes({ day, notes }: BriefNotesProps) {
  const { t } = useWords();
  const { id: house } = useHouse();
  return notes.map((note) => (
    <blockquote key={`${note.by?.id} ${note.at}`} className="brief-note">
      <p className="note-text">
        {note.text}
        {note.cut ? <Link to={`/houses/${house}/days/${day}`}>{t('days.noteGoesOn')}</Link> : null}
      </p>
      <footer className="soft">{note.by?.name ?? t('common.someone')}</footer>
    </blockquote>
  ));
}
