import { Link } from 'react-router';
import type { PhotoView } from '#domain/contract/views';
import { formatTime } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Thumb } from '../../parts/thumb.tsx';
import { useHouse } from '../../shell/use-house.ts';

export function DayPhotos({ photos }: { photos: readonly PhotoView[] }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const time = ({ capture }: PhotoView) =>
    capture.state === 'dated' ? formatTime(capture.instant, zone, lang) : '';
  const tags = (photo: PhotoView) => t('common.count.tags', { count: photo.tags });
  return (
    <ol className="photo-strip plain-list" aria-label={t('days.day.photos')}>
      {photos.map((photo) => (
        <li key={photo.id}>
          <Link
            to={`/houses/${house}/photos/${photo.id}`}
            aria-label={t('days.day.photoLabel', {
              file: photo.fileName,
              time: time(photo),
              tags: tags(photo),
            })}
          >
            <Thumb photo={photo} alt="" />
            <span className="photo-caption">
              <time>{time(photo)}</time>
              <span>{tags(photo)}</span>
            </span>
          </Link>
        </li>
      ))}
    </ol>
  );
}
