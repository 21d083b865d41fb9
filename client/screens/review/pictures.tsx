import { useState, type CSSProperties } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import type { Shown } from './evidence-of.ts';
import { WholePicture } from './whole-picture.tsx';

interface PicturesProps {
  shown: Shown;
  onLarge: () => void;
}

/** Times its height: a crop that is so wide is better as wide as the room than side by side. */
const LONG = 5 / 3;

/** What the region shows with the whole picture: one above the other, or side by side where the region stands. */
export function Pictures({ shown: { tag, fileName, crop }, onLarge }: PicturesProps) {
  const { t } = useWords();
  const [ratio, setRatio] = useState<number | null>(null);
  const stage = t(`common.stage.${tag.stage}`);
  return (
    <div className="review-room">
      <div
        className={`review-pictures ${ratio === null ? '' : formOf(ratio)}`}
        style={{ '--crop-ratio': ratio } as CSSProperties}
      >
        <div className="review-picture">
          <img
            src={crop}
            alt={t('members.history.cropAlt', { mark: tag.mark, file: fileName, stage })}
            onLoad={({ currentTarget: { naturalWidth, naturalHeight } }) =>
              setRatio(naturalWidth / naturalHeight)
            }
          />
          <Enlarge onPress={onLarge} isHeard={false} />
        </div>
        <WholePicture tag={tag} fileName={fileName}>
          <Enlarge onPress={onLarge} />
        </WholePicture>
      </div>
    </div>
  );
}

function formOf(ratio: number): string {
  if (ratio < 1) return 'review-pictures-upright';
  return ratio >= LONG ? 'review-pictures-long' : '';
}

/** Over a picture, which stays one: so it is read out as what it shows. Of two that do the same, one is heard. */
function Enlarge({ onPress, isHeard = true }: { onPress: () => void; isHeard?: boolean }) {
  const { t } = useWords();
  return (
    <button
      type="button"
      className="review-enlarge"
      aria-label={t('hold.review.large.open')}
      aria-hidden={!isHeard}
      tabIndex={isHeard ? 0 : -1}
      onClick={onPress}
    />
  );
}
