import { Link } from 'react-router';
import type { SmallPhotoView } from '#domain/contract/small-photo';
import type { PhotoView } from '#domain/contract/views';
import type { CaptureDoubt } from '#domain/photo/capture-doubts';
import { formatTime } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { alikeWords } from '../photos/alike-words.ts';
import { Thumb } from '../../parts/thumb.tsx';
import { useHouse } from '../../shell/use-house.ts';

export interface PhotoStripProps {
  photos: readonly (SmallPhotoView & { doubt?: CaptureDoubt | null; alike?: PhotoView['alike'] })[];
  label: string;
  /** 'small': without words below. */
  size?: 'small' | 'plain';
}

/** Small pictures of one day in a row, each leading to the bench. */
export function PhotoStrip({ photos, label, size = 'plain' }: PhotoStripProps) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  return (
    <ol className={`photo-strip photo-strip-${size} plain-list`} aria-label={label}>
      {photos.map((photo) => {
        const time = photo.instant === null ? '' : formatTime(photo.instant, zone, lang);
        const tags = t('common.count.tags', { count: photo.tags });
        const doubt = photo.doubt ? t(`days.doubt.${photo.doubt}`) : '';
        const alike = alikeWords(t, photo.id, photo.alike?.burst ?? null);
        const words = { file: photo.fileName, time, tags };
        return (
          <li key={photo.id}>
            <Link
              to={`/houses/${house}/photos/${photo.id}`}
              aria-label={[t('days.day.photoLabel', words), alike?.label, doubt].filter(Boolean).join(' ')}
            >
              <Thumb photo={photo} alt="" />
              {size === 'small' ? null : (
                <span className="photo-caption">
                  <time>{time}</time> <span>{tags}</span> {alike ? <span>{alike.mark}</span> : null}{' '}
                  {alike?.isSharpest ? <b>{t('legibility.alike.sharpest')}</b> : null}{' '}
                  {doubt === '' ? null : <span className="act-text">{doubt}</span>}
                </span>
              )}
            </Link>
          </li>
        );
      })}
    </ol>
  );
}
