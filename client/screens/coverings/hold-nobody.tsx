import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';
import { whyNobodyReleases } from './who-releases.ts';

/** Says so where the house has nobody who could release what is said to be ready. */
export function HoldNobody() {
  const { t } = useWords();
  const { id: house, fourEyes } = useHouse();
  const asker = useSession().data?.account?.id;
  const { data } = useQuery({
    queryKey: keys.people(house),
    queryFn: ({ signal }) => call('listPeople', { params: { house }, signal }),
  });
  const why = data && whyNobodyReleases(data.people, { asker, fourEyes });
  if (!why) return null;
  return (
    <p className="act-text">
      {t(`hold.ready.${why}`)}{' '}
      <Link className="line-link" to={`/houses/${house}/people`}>
        {t('hold.ready.toPeople')}
      </Link>
    </p>
  );
}
