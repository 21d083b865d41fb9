import { formatDay, formatNumber } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { Spinner } from '../../parts/spinner.tsx';
import { groupByDay, type PhotoGroup } from './photo-days.ts';
import { filterAddress, isFiltered, type PhotoFilter } from './photo-filter.ts';
import { PhotoTile } from './photo-tile.tsx';
import { usePhotoPages } from './use-photo-pages.ts';

/** Small pictures in order of capture, day by day, undated ones last. */
export function PhotoList({ house, filter }: { house: string; filter: PhotoFilter }) {
  const { t, lang } = useWords();
  const query = usePhotoPages(house, filter);
  const retry = <Button onPress={() => void query.refetch()}>{t('common.tryAgain')}</Button>;
  if (!query.data) return query.isError ? <ProblemNotice error={query.error} actions={retry} /> : <Spinner />;
  const photos = query.data.pages.flatMap((page) => page.photos);
  const total = query.data.pages[0]?.total ?? 0;
  if (photos.length === 0) return <NoPhotos isFiltered={isFiltered(filter)} />;
  return (
    <div className="stack">
      {query.isError ? <ProblemNotice error={query.error} actions={retry} /> : null}
      <p className="soft" role="status">
        {t('photos.list.total', { count: total })}
      </p>
      {groupByDay(photos).map((group) => (
        <DayGroup key={group.day ?? ''} group={group} search={filterAddress(filter)} />
      ))}
      {query.hasNextPage ? (
        <div className="row">
          <Button isPending={query.isFetchingNextPage} onPress={() => void query.fetchNextPage()}>
            {t('photos.list.more')}
          </Button>
          <span className="soft">
            {t('photos.list.shown', {
              shown: formatNumber(photos.length, lang),
              total: formatNumber(total, lang),
            })}
          </span>
        </div>
      ) : null}
    </div>
  );
}

function DayGroup({ group: { day, photos }, search }: { group: PhotoGroup; search: string }) {
  const { t, lang } = useWords();
  const title = day === null ? t('photos.list.undated') : formatDay(day, lang);
  return (
    <section className="section" aria-label={title}>
      <h2>{title}</h2>
      {day === null ? <p className="soft">{t('photos.list.undatedText')}</p> : null}
      <ul className="plain-list photos-grid">
        {photos.map((photo) => (
          <PhotoTile key={photo.id} photo={photo} search={search} />
        ))}
      </ul>
    </section>
  );
}

function NoPhotos({ isFiltered: narrowed }: { isFiltered: boolean }) {
  const { t } = useWords();
  return narrowed ? (
    <EmptyState title={t('photos.list.noMatch')}>{t('photos.list.noMatchText')}</EmptyState>
  ) : (
    <EmptyState title={t('photos.list.none')}>{t('photos.list.noneText')}</EmptyState>
  );
}
