import { Link } from 'react-router';
import type { HouseView } from '#domain/contract/views';
import { useWords } from '../../i18n/use-words.ts';
import './houses.css';

const COUNTED = ['members', 'photos', 'tags', 'coverings'] as const;

export function HouseList({ houses }: { houses: readonly HouseView[] }) {
  const { t } = useWords();
  return (
    <ul className="house-list plain-list" aria-label={t('houses.list')}>
      {houses.map((house) => (
        <li key={house.id}>
          <Link to={`/houses/${house.id}`}>{house.name}</Link>
          <p className="house-list-counts">
            {COUNTED.map((what) => (
              <span key={what}>{t(`common.count.${what}`, { count: house.counts[what] })}</span>
            ))}
          </p>
          <p className="soft">{t('houses.role', { role: t(`common.role.${house.role}`) })}</p>
        </li>
      ))}
    </ul>
  );
}
