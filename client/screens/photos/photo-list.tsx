import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { EmptyState } from '../../parts/empty-state.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useMay } from '../../shell/use-house.ts';
import { filterAddress, isFiltered, type PhotoFilter } from './photo-filter.ts';
import { PhotoWall } from './photo-wall.tsx';
import { UNDATED } from './wall-day.tsx';

const KEPT_MS = 30 * 60_000;

/** Small pictures, the newest day first, each day in order of capture; what has no date stands last. */
export function PhotoList({ house, filter, at }: { house: string; filter: PhotoFilter; at: string | null }) {
  const { t } = useWords();
  const query = useQuery({
    queryKey: keys.photos(house, { as: 'counts', ...filter }),
    gcTime: KEPT_MS,
    queryFn: ({ signal }) => call('countPhotos', { params: { house }, query: filter, signal }),
  });
  return (
    <QueryState query={query}>
      {(counts) => {
        const total = counts.days.reduce((sum, { photos }) => sum + photos, counts.undated);
        if (total === 0) return <NoPhotos isFiltered={isFiltered(filter)} />;
        return (
          <div className="stack">
            <p className="row" role="status">
              <span className="soft">{t('common.count.photos', { count: total })}</span>
              {counts.undated > 0 ? (
                <a href={`#${UNDATED}`}>{t('photos.list.toUndated', { count: counts.undated })}</a>
              ) : null}
            </p>
            <PhotoWall key={filterAddress(filter)} house={house} filter={filter} at={at} counts={counts} />
          </div>
        );
      }}
    </QueryState>
  );
}

function NoPhotos({ isFiltered: narrowed }: { isFiltered: boolean }) {
  const { t } = useWords();
  const mayAdd = useMay('contribute');
  return narrowed ? (
    <EmptyState title={t('photos.list.noMatch')}>{t('photos.list.noMatchText')}</EmptyState>
  ) : (
    <EmptyState title={t('photos.list.none')}>{mayAdd ? t('photos.list.noneText') : null}</EmptyState>
  );
}
