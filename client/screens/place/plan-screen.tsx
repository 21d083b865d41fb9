import { useState } from 'react';
import { useQuery } from '@tanstack/react-query';
import type { PhotoPlaceView } from '#domain/contract/views';
import { call } from '../../api/call.ts';
import { keys } from '../../api/keys.ts';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { QueryState } from '../../parts/query-state.tsx';
import { Select } from '../../parts/select.tsx';
import { useHouse } from '../../shell/use-house.ts';
import { PlanOfPhotos } from './plan-of-photos.tsx';

const ALL = '';
const UNDATED = '-';

/** Where all photos of a house were taken, or those of one day. */
export function PlanScreen() {
  const { t, lang } = useWords();
  const house = useHouse();
  const [day, setDay] = useState(ALL);
  const query = useQuery({
    queryKey: keys.places(house.id),
    queryFn: ({ signal }) => call('listPlaces', { params: { house: house.id }, signal }),
  });
  const breadcrumb = [{ to: `/houses/${house.id}/photos`, label: t('photos.title') }];
  return (
    <Page title={t('place.title')} lead={t('place.lead')} breadcrumb={breadcrumb}>
      <QueryState query={query}>
        {({ photos, without }) =>
          photos.length === 0 ? (
            <EmptyState title={t('place.plan.none')}>{t('place.plan.noneText')}</EmptyState>
          ) : (
            <>
              <Select
                label={t('place.plan.day')}
                value={day}
                onChange={setDay}
                choices={[
                  { value: ALL, label: t('place.plan.everyDay') },
                  ...daysOf(photos).map((value) => ({
                    value,
                    label: value === UNDATED ? t('place.plan.undated') : formatDay(value, lang),
                  })),
                ]}
              />
              <PlanOfPhotos
                house={house}
                photos={day === ALL ? photos : photos.filter((photo) => (photo.day ?? UNDATED) === day)}
              />
              {without > 0 ? <p className="soft">{t('place.plan.without', { count: without })}</p> : null}
            </>
          )
        }
      </QueryState>
    </Page>
  );
}

/** The newest first; those without a date last. */
function daysOf(photos: readonly PhotoPlaceView[]): string[] {
  const days = new Set(photos.map((photo) => photo.day ?? UNDATED));
  return [...days].sort((a, b) => (a === UNDATED ? 1 : b === UNDATED ? -1 : a < b ? 1 : -1));
}
