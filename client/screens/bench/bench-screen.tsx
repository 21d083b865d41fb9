import { useParams, useSearchParams } from 'react-router';
import { useSession } from '../../api/use-session.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { NotFound } from '../../shell/not-found.tsx';
import { useHouse, useMay } from '../../shell/use-house.ts';
import { filterAddress, readFilter } from '../photos/photo-filter.ts';
import { Bench } from './bench.tsx';
import { LookingBench } from './looking-bench.tsx';
import { PhotoTurner } from './photo-turner.tsx';
import { usePhoto } from './use-photo.ts';
import './bench.css';

/** One photo on the bench: look at it, draw on it, say what it shows. */
export function BenchScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const { photo = '' } = useParams();
  const mayTag = useMay('record');
  const account = useSession().data?.account?.id ?? '';
  const [search] = useSearchParams();
  const filter = readFilter(search);
  const query = usePhoto(house, photo);
  if (query.data && query.data.house !== house) return <NotFound />;
  return (
    <Page
      title={t('bench.title', { file: query.data?.fileName ?? '' })}
      breadcrumb={[
        { to: `/houses/${house}/photos${filterAddress(filter, photo)}`, label: t('common.nav.photos') },
      ]}
      actions={<PhotoTurner house={house} photo={photo} filter={filter} />}
    >
      <QueryState query={query}>
        {(detail) => {
          // Another person's bench has another one's drawings.
          const key = `${account} ${detail.id}`;
          const at = { photo: detail, filter, wanted: search.get('tag') };
          return mayTag ? <Bench {...at} key={key} /> : <LookingBench {...at} key={key} />;
        }}
      </QueryState>
    </Page>
  );
}
