import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import { Spinner } from '../../parts/spinner.tsx';
import { MorePhotos } from './more-photos.tsx';
import { groupByDay } from './photo-days.ts';
import { filterAddress, isFiltered, type PhotoFilter } from './photo-filter.ts';
import { PhotoGrid } from './photo-grid.tsx';
import { loaded, usePhotoPages } from './use-photo-pages.ts';

const UNDATED = 'undated';

/** Small pictures, the newest day first, each day in order of capture; what has no date stands last. */
export function PhotoList({ house, filter }: { house: string; filter: PhotoFilter }) {
  const { t, lang } = useWords();
  const dated = usePhotoPages(house, filter, 'dated');
  const undated = usePhotoPages(house, filter, 'undated');
  const error = dated.error ?? undated.error;
  const retry = () => void Promise.all([dated, undated].filter((q) => q.isError).map((q) => q.refetch()));
  const failed = (
    <ProblemNotice error={error} actions={<Button onPress={retry}>{t('common.tryAgain')}</Button>} />
  );
  if (dated.isPending || undated.isLoading) return error ? failed : <Spinner />;
  const [withDate, without] = [loaded(dated), loaded(undated)];
  const search = filterAddress(filter);
  if (withDate.total + without.total === 0)
    return error ? failed : <NoPhotos isFiltered={isFiltered(filter)} />;
  return (
    <div className="stack">
      {failed}
      <p className="row" role="status">
        <span className="soft">{t('photos.list.total', { count: withDate.total + without.total })}</span>
        {without.total > 0 ? (
          <a href={`#${UNDATED}`}>{t('photos.list.toUndated', { count: without.total })}</a>
        ) : null}
      </p>
      {groupByDay(withDate.photos).map(({ day, photos }) => (
        <section key={day} className="section" aria-label={formatDay(day, lang)}>
          <h2>{formatDay(day, lang)}</h2>
          <PhotoGrid photos={photos} search={search} />
        </section>
      ))}
      <MorePhotos pages={dated} />
      {without.total > 0 ? (
        <section id={UNDATED} className="section" aria-label={t('photos.list.undated')}>
          <h2>{t('photos.list.undated')}</h2>
          <p className="soft">{t('photos.list.undatedText')}</p>
          <PhotoGrid photos={without.photos} search={search} />
        </section>
      ) : null}
      <MorePhotos pages={undated} />
    </div>
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
