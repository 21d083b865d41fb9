import { useState, type ReactNode } from 'react';
import type { EvidenceTagView } from '#domain/contract/review-views';
import { addressOf } from '../../api/address.ts';
import { useWords } from '../../i18n/use-words.ts';
import { usePicture } from '../../parts/use-picture.ts';
import { Region } from './region.tsx';

interface WholePictureProps {
  tag: EvidenceTagView['tag'];
  fileName: string;
  /** Over it. */
  children: ReactNode;
}

/** The whole photo with the region drawn in it. */
export function WholePicture({ tag, fileName, children }: WholePictureProps) {
  const { t } = useWords();
  const [size, setSize] = useState<{ w: number; h: number } | null>(null);
  const { state, onError } = usePicture(tag.photo);
  if (state !== 'asked')
    return <p className="soft">{t(state === 'missing' ? 'common.thumb.missing' : 'common.loading')}</p>;
  return (
    <div className="review-picture">
      <img
        src={addressOf('photoPreview', { photo: tag.photo })}
        alt={t('hold.review.wholeAlt', { mark: tag.mark, file: fileName })}
        onLoad={({ currentTarget: { naturalWidth: w, naturalHeight: h } }) => setSize({ w, h })}
        onError={onError}
      />
      {size ? <Region tag={tag} {...size} /> : null}
      {children}
    </div>
  );
}
