import { useCallback, useMemo, useRef, useState } from 'react';
import type { Answer } from '#domain/contract/routes';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { ProblemNotice } from '../../parts/notice.tsx';
import type { PhotoFilter } from './photo-filter.ts';
import { leaveAt, useLanding } from './use-landing.ts';
import { useSteadyWall } from './use-steady-wall.ts';
import { useWallFocus } from './use-wall-focus.ts';
import { useWallPhotos } from './use-wall-photos.ts';
import { useWallShape } from './use-wall-shape.ts';
import { useWallView } from './use-wall-view.ts';
import { WallDay } from './wall-day.tsx';
import { layOut, type Slot } from './wall-layout.ts';
import { PAGE } from './wall-pages.ts';
import { drawnParts } from './wall-parts.ts';

export interface PhotoWallProps {
  house: string;
  filter: PhotoFilter;
  at: string | null;
  counts: Answer<'countPhotos'>;
}

/** A list of one page is drawn whole: there is nothing to save, and the browser's own search finds all of it. */
const WHOLE = { from: 0, to: Infinity };

/** All photos of a list; in the page are only those near the window and the one that has the focus. */
export function PhotoWall({ house, filter, at, counts }: PhotoWallProps) {
  const { t } = useWords();
  const wall = useRef<HTMLDivElement>(null);
  const [undatedHead, setUndatedHead] = useState(100);
  const shape = useWallShape(wall, undatedHead);
  const layout = useMemo(
    () => layOut([...counts.days, { day: null, photos: counts.undated }], shape),
    [counts, shape],
  );
  const view = useWallView(wall);
  const isSmall = layout.days.reduce((sum, { photos }) => sum + photos, 0) <= PAGE;
  const [keptSlot, setKeptSlot] = useState<Slot | null>(null);
  const parts = drawnParts(layout, isSmall ? WHOLE : view, keptSlot);
  const photos = useWallPhotos(house, filter, parts, view.isRushing);
  const focus = useWallFocus(wall, layout, photos);
  if (!isSameSlot(focus.held, keptSlot)) setKeptSlot(focus.held);
  useSteadyWall(wall, layout, photos);
  useLanding({ house, filter, at, wall, layout, hold: focus.hold });
  const onLeave = useCallback(
    (photo: string, slot: Slot) => leaveAt(house, filter, photo, slot),
    [house, filter],
  );
  return (
    <div>
      <div
        ref={wall}
        className="photos-wall"
        style={{ height: layout.height }}
        onFocus={focus.onFocus}
        onBlur={focus.onBlur}
        onKeyDown={focus.onKeyDown}
      >
        {parts.map((part) => (
          <WallDay
            key={part.day ?? ''}
            part={part}
            shape={shape}
            photos={photos}
            filter={filter}
            isRushing={view.isRushing}
            onLeave={onLeave}
            onHead={setUndatedHead}
          />
        ))}
      </div>
      {photos.error ? (
        <div className="photos-wall-problem">
          <ProblemNotice
            error={photos.error}
            actions={<Button onPress={photos.retry}>{t('common.tryAgain')}</Button>}
          />
        </div>
      ) : null}
    </div>
  );
}

function isSameSlot(a: Slot | null, b: Slot | null): boolean {
  return a?.day === b?.day && a?.position === b?.position;
}
