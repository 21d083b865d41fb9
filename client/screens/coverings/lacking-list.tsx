import { Link } from 'react-router';
import type { Lacking } from '#domain/contract/hold';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

/** What an inspector has named as missing, member by member. */
export function LackingList({ lacking }: { lacking: readonly Lacking[] }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  if (lacking.length === 0) return null;
  return (
    <>
      <p>{t('hold.lacking', { count: lacking.length })}</p>
      <ul className="plain-list" aria-label={t('hold.lacking', { count: lacking.length })}>
        {lacking.map(({ mark, note }) => (
          <li key={mark} className="row">
            <Link to={`/houses/${house}/members/${encodeURIComponent(mark)}`}>{mark}</Link>
            {note === '' ? null : <span>{note}</span>}
          </li>
        ))}
      </ul>
    </>
  );
}
