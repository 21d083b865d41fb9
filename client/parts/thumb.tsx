import type { PhotoView } from '#domain/contract/views';
import { addressOf } from '../api/address.ts';
import { useWords } from '../i18n/use-words.ts';
import { usePicture } from './use-picture.ts';

export interface ThumbProps {
  photo: Pick<PhotoView, 'id' | 'pictures' | 'width' | 'height'>;
  /** Says what the picture shows; empty where the text beside it does. */
  alt: string;
}

/** The small picture of a photo, or what stands in its way. It keeps its place while it loads. */
export function Thumb({ photo, alt }: ThumbProps) {
  const { t } = useWords();
  const { id, pictures } = photo;
  return (
    <span className="thumb">
      {pictures === 'pending' || pictures === 'unreadable' ? (
        <Instead alt={alt} says={t(`common.thumb.${pictures}`)} />
      ) : (
        <Drawn key={`${id} ${pictures}`} photo={photo} alt={alt} />
      )}
    </span>
  );
}

function Drawn({ photo: { id, width, height }, alt }: ThumbProps) {
  const { t } = useWords();
  const { state, onError } = usePicture(id);
  if (state !== 'asked')
    return <Instead alt={alt} says={t(state === 'missing' ? 'common.thumb.missing' : 'common.loading')} />;
  const src = addressOf('photoThumb', { photo: id });
  return <img {...{ src, alt, width, height, onError }} loading="lazy" decoding="async" />;
}

function Instead({ alt, says }: { alt: string; says: string }) {
  return (
    <span className="thumb-missing">
      <span className="out-of-sight">{alt}</span>
      {says}
    </span>
  );
}
