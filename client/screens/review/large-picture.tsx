import { useLayoutEffect, useRef, useState, type MouseEvent } from 'react';
import type { EvidenceTagView } from '#domain/contract/review-views';
import { addressOf } from '../../api/address.ts';
import { useWords } from '../../i18n/use-words.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { LARGEST, largerBy, middleOf, zoomFor, type Spot } from './large-view.ts';
import { Region } from './region.tsx';

interface LargePictureProps {
  tag: EvidenceTagView['tag'];
  fileName: string;
  onClose: () => void;
}

/** The whole photo as large as one likes, at first with the region in its middle; it is moved by scrolling. */
export function LargePicture({ tag, fileName, onClose }: LargePictureProps) {
  const { t } = useWords();
  const frame = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<{ w: number; h: number } | null>(null);
  const [view, setView] = useState(() => ({ zoom: zoomFor(tag.region), spot: middleOf(tag.region) }));
  useLayoutEffect(() => {
    if (frame.current && size) bringToMiddle(frame.current, view.spot);
  }, [view, size]);
  const enlarge = (by: number, spot?: Spot) =>
    setView(({ zoom }) => ({
      zoom: largerBy(zoom, by),
      spot: spot ?? (frame.current ? spotInMiddle(frame.current) : { x: 0.5, y: 0.5 }),
    }));
  return (
    <Dialog
      title={t('hold.review.wholeAlt', { mark: tag.mark, file: fileName })}
      isOpen
      onClose={onClose}
      stands="wide"
    >
      <div ref={frame} className="review-large" tabIndex={0}>
        <div
          className="review-large-sheet"
          style={{ width: `${view.zoom * 100}%` }}
          onClick={(event) => enlarge(view.zoom >= LARGEST ? 1 / LARGEST : 2, spotOf(event))}
        >
          <img
            src={addressOf('photoPreview', { photo: tag.photo })}
            alt=""
            onLoad={({ currentTarget: { naturalWidth: w, naturalHeight: h } }) => setSize({ w, h })}
          />
          {size ? <Region tag={tag} {...size} /> : null}
        </div>
      </div>
      <div className="row">
        <Button onPress={() => enlarge(1.5)} isDisabled={view.zoom >= LARGEST}>
          {t('hold.review.large.more')}
        </Button>
        <Button onPress={() => enlarge(1 / 1.5)} isDisabled={view.zoom <= 1}>
          {t('hold.review.large.less')}
        </Button>
        <Button onPress={onClose}>{t('hold.review.large.close')}</Button>
      </div>
    </Dialog>
  );
}

/** Where on the picture, as shares of its size. */
function spotOf({ currentTarget, clientX, clientY }: MouseEvent): Spot {
  const { left, top, width, height } = currentTarget.getBoundingClientRect();
  return { x: (clientX - left) / width, y: (clientY - top) / height };
}

function spotInMiddle(frame: HTMLElement): Spot {
  const { scrollLeft, scrollTop, clientWidth, clientHeight, scrollWidth, scrollHeight } = frame;
  return {
    x: (scrollLeft + clientWidth / 2) / scrollWidth,
    y: (scrollTop + clientHeight / 2) / scrollHeight,
  };
}

function bringToMiddle(frame: HTMLElement, { x, y }: Spot): void {
  frame.scrollLeft = x * frame.scrollWidth - frame.clientWidth / 2;
  frame.scrollTop = y * frame.scrollHeight - frame.clientHeight / 2;
}
