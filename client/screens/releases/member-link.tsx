import { Link } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

export function MemberLink({ mark }: { mark: string }) {
  const { t } = useWords();
  const { id: house } = useHouse();
  return (
    <Link
      className="release-mark"
      to={`/houses/${house}/members/${encodeURIComponent(mark)}`}
      aria-label={t('releases.member', { mark })}
    >
      {mark}
    </Link>
  );
}
