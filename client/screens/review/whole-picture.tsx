import { useState } from 'react';
import type { EvidenceTagView } from '#domain/contract/review-views';
import { outline } from '#domain/photo/region';
import { addressOf } from '../../api/address.ts';
import { useWords } from '../../i18n/use-words.ts';

/** The whole photo with the region drawn in it. */
export function WholePicture({ tag, fileName }: { tag: EvidenceTagView['tag']; fileName: string }) {
  const { t } = useWords();
  const [isGone, setIsGone] = useState(false);
  if (isGone) return <p className="soft">{t('common.thumb.unreadable')}</p>;
  const points = outline(tag.region)
    .map((point) => point.join(','))
    .join(' ');
  return (
    <div className="review-whole">
      <img
        src={addressOf('photoPreview', { photo: tag.photo })}
        alt={t('hold.review.wholeAlt', { mark: tag.mark, file: fileName })}
        onError={() => setIsGone(true)}
      />
      <svg viewBox="0 0 1 1" preserveAspectRatio="none" aria-hidden="true">
        <polygon className="review-halo" points={points} />
        <polygon className="review-region" points={points} />
      </svg>
    </div>
  );
}
