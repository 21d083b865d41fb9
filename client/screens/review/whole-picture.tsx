import { useState } from 'react';
import type { EvidenceTagView } from '#domain/contract/review-views';
import { outline } from '#domain/photo/region';
import { addressOf } from '../../api/address.ts';
import { useWords } from '../../i18n/use-words.ts';

/** The whole photo with the region drawn in it. */
export function WholePicture({ tag, fileName }: { tag: EvidenceTagView['tag']; fileName: string }) {
  const { t } = useWords();
  const [size, setSize] = useState<{ w: number; h: number } | null>(null);
  const [isGone, setIsGone] = useState(false);
  if (isGone) return <p className="soft">{t('common.thumb.unreadable')}</p>;
  return (
    <div className="review-picture">
      <img
        src={addressOf('photoPreview', { photo: tag.photo })}
        alt={t('hold.review.wholeAlt', { mark: tag.mark, file: fileName })}
        onLoad={({ currentTarget: { naturalWidth: w, naturalHeight: h } }) => setSize({ w, h })}
        onError={() => setIsGone(true)}
      />
      {size ? <Region tag={tag} {...size} /> : null}
    </div>
  );
}

/** Fitted into the same frame as the picture, so that it lies on it at any size. */
function Region({ tag, w, h }: { tag: EvidenceTagView['tag']; w: number; h: number }) {
  const points = outline(tag.region)
    .map(([x, y]) => `${x * w},${y * h}`)
    .join(' ');
  return (
    <svg viewBox={`0 0 ${w} ${h}`} aria-hidden="true">
      <polygon className="review-halo" points={points} />
      <polygon className="review-region" points={points} />
    </svg>
  );
}
