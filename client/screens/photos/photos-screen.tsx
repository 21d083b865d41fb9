import { useSearchParams } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { LinkButton } from '../../parts/button.tsx';
import { Page } from '../../parts/page.tsx';
import { useHouse, useHouseCounts, useMay } from '../../shell/use-house.ts';
import { AddPhotos } from './add-photos.tsx';
import { FilterBar } from './filter-bar.tsx';
import { OthersNotice } from './others-notice.tsx';
import { AT, filterAddress, readFilter } from './photo-filter.ts';
import { PhotoList } from './photo-list.tsx';
import { UploadList } from './upload-list.tsx';
import './photos.css';

/** All photos of the house: bringing them in, and finding them again. */
export function PhotosScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const counts = useHouseCounts();
  const mayAdd = useMay('contribute');
  const [search, setSearch] = useSearchParams();
  const filter = readFilter(search);
  return (
    // Where there are photos already, the room is theirs.
    <Page
      title={t('photos.title')}
      lead={counts.photos === 0 && mayAdd ? t('photos.lead') : null}
      actions={
        counts.photos === 0 ? null : (
          <>
            <LinkButton to={`/houses/${house}/plan`}>{t('place.toPlan')}</LinkButton>
            <LinkButton to={`/houses/${house}/cameras`}>{t('clock.toCameras')}</LinkButton>
          </>
        )
      }
    >
      <OthersNotice house={house} />
      {mayAdd ? <AddPhotos house={house} /> : null}
      <UploadList house={house} />
      <FilterBar
        house={house}
        filter={filter}
        onChange={(next) => setSearch(filterAddress(next), { replace: true, preventScrollReset: true })}
      />
      <PhotoList house={house} filter={filter} at={search.get(AT)} />
    </Page>
  );
}
