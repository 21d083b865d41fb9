import { useState } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import type { Shown } from './evidence-of.ts';
import { WholePicture } from './whole-picture.tsx';

/** What the region shows with the whole picture: one above the other, or side by side where the region stands. */
export function Pictures({ shown: { tag, fileName, crop } }: { shown: Shown }) {
  const { t } = useWords();
  const [isUpright, setIsUpright] = useState(false);
  const stage = t(`common.stage.${tag.stage}`);
  return (
    <div className="review-room">
      <div className={isUpright ? 'review-pictures review-pictures-upright' : 'review-pictures'}>
        <div className="review-picture">
          <img
            src={crop}
            alt={t('members.history.cropAlt', { mark: tag.mark, file: fileName, stage })}
            onLoad={({ currentTarget: { naturalWidth, naturalHeight } }) =>
              setIsUpright(naturalHeight > naturalWidth)
            }
          />
        </div>
        <WholePicture tag={tag} fileName={fileName} />
      </div>
    </div>
  );
}
