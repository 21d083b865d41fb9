import { useSearchParams } from 'react-router';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { AddPhotos } from './add-photos.tsx';
import { FilterBar } from './filter-bar.tsx';
import { OthersNotice } from './others-notice.tsx';
import { filterAddress, readFilter } from './photo-filter.ts';
import { PhotoList } from './photo-list.tsx';
import { UploadList } from './upload-list.tsx';
import './photos.css';

/** All photos of the house: bringing them in, and finding them again. */
export function PhotosScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const [search, setSearch] = useSearchParams();
  const filter = readFilter(search);
  return (
    <Page title={t('photos.title')} lead={t('photos.lead')}>
      <OthersNotice house={house} />
      <AddPhotos house={house} />
      <UploadList house={house} />
      <FilterBar
        key={filter.mark ?? ''}
        house={house}
        filter={filter}
        onChange={(next) => setSearch(filterAddress(next), { replace: true })}
      />
      <PhotoList house={house} filter={filter} />
    </Page>
  );
}
