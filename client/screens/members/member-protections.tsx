import type { MemberHistoryView } from '#domain/contract/views';
import { formatInstant } from '../../i18n/format.ts';
import { stretchWords } from '../../i18n/stretch-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

type Over = MemberHistoryView['protections'][number];

/** When temporary protection lay over a member, and over which part of it. */
export function MemberProtections({ protections }: { protections: readonly Over[] }) {
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const when = ({ laidAt, lifted }: Over) => {
    const from = formatInstant(laidAt, zone, lang);
    return lifted
      ? t('protection.period', { from, to: formatInstant(lifted.at, zone, lang) })
      : t('protection.history.still', { from });
  };
  const where = ({ stretch }: Over) =>
    stretch
      ? stretchWords(t, lang, { ...stretch, fromMark: null, toMark: null })
      : t('protection.history.whole');
  return (
    <ul className="stack plain-list">
      {protections.map((over) => (
        <li key={over.id}>
          <strong>{over.name}</strong>
          <p className="soft">
            {over.what} · {when(over)} · {where(over)}
          </p>
        </li>
      ))}
    </ul>
  );
}
