import { useState } from 'react';
import type { PhotoView } from '#domain/contract/views';
import { addressOf } from '../api/address.ts';
import { useWords } from '../i18n/use-words.ts';

export interface ThumbProps {
  photo: Pick<PhotoView, 'id' | 'pictures' | 'width' | 'height'>;
  /** Says what the picture shows; empty where the text beside it does. */
  alt: string;
}

/** The small picture of a photo, or what stands in its way. It keeps its place while it loads. */
export function Thumb({ photo, alt }: ThumbProps) {
  const { t } = useWords();
  const [failed, setFailed] = useState(false);
  const isDrawn = (photo.pictures === 'ready' || photo.pictures === 'damaged') && !failed;
  const waiting = photo.pictures === 'unreadable' || failed ? 'unreadable' : 'pending';
  return (
    <span className="thumb">
      {isDrawn ? (
        <img
          src={addressOf('photoThumb', { photo: photo.id })}
          alt={alt}
          width={photo.width}
          height={photo.height}
          loading="lazy"
          decoding="async"
          onError={() => setFailed(true)}
        />
      ) : (
        <span className="thumb-missing">
          <span className="out-of-sight">{alt}</span>
          {t(`common.thumb.${waiting}`)}
        </span>
      )}
    </span>
  );
}
