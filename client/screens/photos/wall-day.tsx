import { memo, useLayoutEffect, useRef } from 'react';
import { formatDay } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { filterAddress, type PhotoFilter } from './photo-filter.ts';
import { PhotoTile } from './photo-tile.tsx';
import type { WallPhotos } from './use-wall-photos.ts';
import { tileAt, type Slot, type WallShape } from './wall-layout.ts';
import { positionsOf, type DrawnPart } from './wall-parts.ts';

export const UNDATED = 'undated';

export interface WallDayProps {
  part: DrawnPart;
  shape: WallShape;
  photos: WallPhotos;
  filter: PhotoFilter;
  isRushing: boolean;
  onLeave: (photo: string, slot: Slot) => void;
  onHead: (height: number) => void;
}

/** A day as high as all its photos need, with those that are near. Its heading stays while one is within it. */
export function WallDay({ part, shape, photos, filter, isRushing, onLeave, onHead }: WallDayProps) {
  const { t, lang } = useWords();
  const { day, of } = part;
  const title = day === null ? t('photos.list.undated') : formatDay(day, lang);
  const search = filterAddress(filter);
  return (
    <section
      id={day === null ? UNDATED : undefined}
      className="photos-day"
      aria-label={title}
      style={{ top: of.top, height: of.height }}
    >
      <Heading title={title} count={of.photos} />
      {day === null ? <UndatedText head={shape.head} onHead={onHead} /> : null}
      <ul role="list" className="plain-list photos-tiles" style={{ top: of.head }}>
        {positionsOf(part).map((position) => {
          const { left, top } = tileAt(shape, position);
          return (
            <PhotoTile
              key={position}
              photo={photos.at({ day, position })}
              day={day}
              position={position}
              total={of.photos}
              left={left}
              top={top}
              width={shape.tileWidth}
              height={shape.tileHeight}
              search={search}
              isRushing={isRushing}
              onLeave={onLeave}
            />
          );
        })}
      </ul>
    </section>
  );
}

const Heading = memo(function Heading({ title, count }: { title: string; count: number }) {
  const { t } = useWords();
  return (
    <div className="photos-day-head">
      <h2>{title}</h2>
      <span className="soft">{t('common.count.photos', { count })}</span>
    </div>
  );
});

/** Says how high it is with the heading above it: how many lines it takes depends on the window. */
function UndatedText({ head, onHead }: { head: number; onHead: (height: number) => void }) {
  const { t } = useWords();
  const text = useRef<HTMLParagraphElement>(null);
  useLayoutEffect(() => {
    const element = text.current;
    if (!element) return;
    const measure = () => onHead(Math.ceil(head + element.offsetHeight));
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [head, onHead]);
  return (
    <p ref={text} className="soft photos-undated">
      {t('photos.list.undatedText')}
    </p>
  );
}
