import { useQuery } from '@tanstack/react-query';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { useWords } from '../../i18n/use-words.ts';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { CameraPart } from './camera-part.tsx';

/** The cameras of a house and what is known of their clocks. */
export function CamerasScreen() {
  const { t } = useWords();
  const { id: house } = useHouse();
  const query = useQuery({
    queryKey: keys.cameras(house),
    queryFn: ({ signal }) => call('listCameras', { params: { house }, signal }),
  });
  return (
    <Page
      title={t('clock.cameras')}
      lead={t('clock.lead')}
      breadcrumb={[{ to: `/houses/${house}/photos`, label: t('photos.title') }]}
    >
      <p>{t('clock.how')}</p>
      <QueryState query={query}>
        {({ cameras, unnamed }) => (
          <>
            {cameras.length === 0 ? (
              <EmptyState title={t('clock.none')}>{t('clock.noneText')}</EmptyState>
            ) : null}
            {cameras.map((camera) => (
              <CameraPart key={JSON.stringify([camera.make, camera.model, camera.serial])} camera={camera} />
            ))}
            {unnamed > 0 ? <p className="soft">{t('clock.unnamed', { count: unnamed })}</p> : null}
          </>
        )}
      </QueryState>
    </Page>
  );
}
