import { useState } from 'react';
import { Link } from 'react-router';
import type { PhotoView } from '#domain/contract/views';
import { addressOf } from '../../api/address.ts';
import { formatTime } from '../../i18n/format.ts';
import { useWords } from '../../i18n/use-words.ts';
import { useHouse } from '../../shell/use-house.ts';

/** A small picture that leads to the bench; says when it was taken and whether anything was said about it. */
export function PhotoTile({ photo, search }: { photo: PhotoView; search: string }) {
  const { t, lang } = useWords();
  const { id: house, zone } = useHouse();
  const { capture, fileName: file, tags } = photo;
  const when = capture.state === 'dated' ? formatTime(capture.instant, zone, lang) : t('photos.list.noTime');
  const said = tags === 0 ? t('photos.list.untagged') : t('common.count.tags', { count: tags });
  return (
    <li className="photos-tile" style={{ aspectRatio: ratio(photo) }}>
      <Link
        to={`/houses/${house}/photos/${photo.id}${search}`}
        aria-label={t('photos.list.openPhoto', { file, when, tags: said })}
      >
        <TilePicture key={photo.pictures} photo={photo} />
        <span className="photos-tile-words" aria-hidden="true">
          <span>{when}</span> <span className={tags === 0 ? 'photos-tile-untagged' : undefined}>{said}</span>
        </span>
      </Link>
    </li>
  );
}

/** Very long panoramas and scans are shown cut. */
function ratio({ width, height }: PhotoView): number {
  return Math.min(2.2, Math.max(0.6, width / height));
}

function TilePicture({ photo }: { photo: PhotoView }) {
  const { t } = useWords();
  const [isMissing, setIsMissing] = useState(false);
  if (isMissing) return <span className="photos-tile-empty">{t('photos.picture.missing')}</span>;
  if (photo.pictures === 'pending' || photo.pictures === 'unreadable') {
    return <span className="photos-tile-empty">{t(`photos.picture.${photo.pictures}`)}</span>;
  }
  return (
    <>
      <img
        src={addressOf('photoThumb', { photo: photo.id })}
        alt=""
        loading="lazy"
        decoding="async"
        onError={() => setIsMissing(true)}
      />
      {photo.pictures === 'damaged' ? (
        <span className="photos-tile-damaged">{t('photos.picture.damaged')}</span>
      ) : null}
    </>
  );
}
