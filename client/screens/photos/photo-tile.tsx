import { memo, useState, type MouseEvent, type ReactNode } from 'react';
import { useHref, useLinkClickHandler } from 'react-router';
import type { PhotoView } from '#domain/contract/views';
import { addressOf } from '../../api/address.ts';
import { formatTime } from '../../i18n/format.ts';
import { joinWords } from '../../i18n/join-words.ts';
import { useWords } from '../../i18n/use-words.ts';
import { usePicture } from '../../parts/use-picture.ts';
import { useHouse } from '../../shell/use-house.ts';
import { briefFlag } from './capture-sentence.ts';
import { alikeWords } from './alike-words.ts';
import type { Slot } from './wall-layout.ts';

export interface PhotoTileProps {
  /** Undefined until it is known which photo stands here. */
  photo: PhotoView | undefined;
  day: string | null;
  position: number;
  /** How many the day has. */
  total: number;
  left: number;
  top: number;
  width: number;
  height: number;
  search: string;
  isRushing: boolean;
  onLeave: (photo: string, slot: Slot) => void;
}

/** A small picture that leads to the bench; says when it was taken and whether anything was said about it. */
export const PhotoTile = memo(function PhotoTile(props: PhotoTileProps) {
  const { photo, position, total, left, top, width, height, isRushing } = props;
  const { t, lang } = useWords();
  const { zone } = useHouse();
  const place = { style: { left, top, width, height }, 'aria-setsize': total, 'aria-posinset': position + 1 };
  if (!photo)
    return (
      <li className="photos-tile" {...place}>
        <TileLink {...props} label={t('photos.list.loading')} />
      </li>
    );
  const { capture, fileName: file, tags } = photo;
  const brief = briefFlag(capture);
  const time = capture.state === 'dated' ? formatTime(capture.instant, zone, lang) : t('photos.list.noTime');
  const when = brief === 'dated-by-hand' ? joinWords([time, t(`clock.brief.${brief}`)], lang) : time;
  const alike = alikeWords(t, photo.id, photo.alike.burst);
  const said = tags === 0 ? t('photos.list.untagged') : t('common.count.tags', { count: tags });
  return (
    <li className={photo.height > photo.width ? 'photos-tile photos-tile-upright' : 'photos-tile'} {...place}>
      <TileLink
        {...props}
        label={[t('photos.list.openPhoto', { file, when, tags: said }), alike?.label ?? ''].join(' ').trim()}
      >
        <TilePicture key={`${photo.id} ${photo.pictures}`} photo={photo} isRushing={isRushing} />
        <span className="photos-tile-words" aria-hidden="true">
          <span>{when}</span> <span className={tags === 0 ? 'photos-tile-untagged' : undefined}>{said}</span>
        </span>{' '}
        {alike ? (
          <span className="photos-tile-alike" aria-hidden="true">
            <span>{alike.mark}</span> {alike.isSharpest ? <b>{t('legibility.alike.sharpest')}</b> : null}
          </span>
        ) : null}
      </TileLink>
    </li>
  );
});

/** One element before and after it is known which photo it leads to, so that the focus on it stays. */
function TileLink(props: PhotoTileProps & { label: string; children?: ReactNode }) {
  const { photo, day, position, search, onLeave, label, children } = props;
  const { id: house } = useHouse();
  const to = photo ? `/houses/${house}/photos/${photo.id}${search}` : '.';
  const href = useHref(to);
  const go = useLinkClickHandler<HTMLAnchorElement>(to);
  const click = (event: MouseEvent<HTMLAnchorElement>) => {
    if (!photo) return;
    onLeave(photo.id, { day, position });
    go(event);
  };
  return (
    <a
      href={photo ? href : undefined}
      role="link"
      tabIndex={0}
      aria-disabled={photo ? undefined : true}
      aria-label={label}
      data-day={day ?? ''}
      data-position={position}
      onClick={click}
    >
      {children}
    </a>
  );
}

function TilePicture({ photo, isRushing }: { photo: PhotoView; isRushing: boolean }) {
  const { state, onError } = usePicture(photo.id);
  // What rushes past is not fetched; what was once, stays.
  const [isWanted, setIsWanted] = useState(!isRushing);
  if (!isRushing && !isWanted) setIsWanted(true);
  if (photo.pictures === 'pending' || photo.pictures === 'unreadable')
    return <PictureState state={photo.pictures} />;
  if (!isWanted) return null;
  if (state !== 'asked') return <PictureState state={state} />;
  return (
    <>
      <img src={addressOf('photoThumb', { photo: photo.id })} alt="" decoding="async" onError={onError} />
      {photo.pictures === 'damaged' ? <PictureState state="damaged" /> : null}
    </>
  );
}

/** In a component of its own, since most tiles have nothing to say of this. */
function PictureState({ state }: { state: keyof typeof STATE_WORDS }) {
  const { t } = useWords();
  const look = state === 'damaged' ? 'photos-tile-damaged' : 'photos-tile-empty';
  return <span className={look}>{t(STATE_WORDS[state])}</span>;
}

const STATE_WORDS = {
  resting: 'common.loading',
  missing: 'common.thumb.missing',
  pending: 'photos.picture.pending',
  unreadable: 'photos.picture.unreadable',
  damaged: 'photos.picture.damaged',
} as const;
