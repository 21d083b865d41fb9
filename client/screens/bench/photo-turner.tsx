import { useWords } from '../../i18n/use-words.ts';
import { formatNumber } from '../../i18n/format.ts';
import { LinkButton } from '../../parts/button.tsx';
import { filterAddress, type PhotoFilter } from '../photos/photo-filter.ts';
import { useNeighbours } from './use-neighbours.ts';

export interface PhotoTurnerProps {
  house: string;
  photo: string;
  filter: PhotoFilter;
}

/** To the photo before and after, in the list that one came from. */
export function PhotoTurner({ house, photo, filter }: PhotoTurnerProps) {
  const { t, lang } = useWords();
  const around = useNeighbours(house, photo, filter);
  if (!around) return null;
  const address = (id: string) => `/houses/${house}/photos/${id}${filterAddress(filter)}`;
  const { previous, next, at, total } = around;
  return (
    <nav className="row" aria-label={t('common.nav.photos')}>
      {previous ? <LinkButton to={address(previous)}>{t('bench.previous')}</LinkButton> : null}
      <span className="soft">
        {t('bench.place', { at: formatNumber(at, lang), total: formatNumber(total, lang) })}
      </span>
      {next ? <LinkButton to={address(next)}>{t('bench.next')}</LinkButton> : null}
    </nav>
  );
}
