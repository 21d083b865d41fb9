import { useEffect, useMemo, useRef, useState, type CSSProperties, type RefObject } from 'react';
import { createPortal } from 'react-dom';
import type { PhotoDetailView } from '#domain/contract/views';
import { addressOf } from '../../api/address.ts';
import { useWords } from '../../i18n/use-words.ts';
import type { BenchState } from './bench-model.ts';
import type { BenchTag } from './bench-tags.ts';
import { crossedTag } from './crossed-tag.ts';
import type { Entry } from './desk-state.ts';
import type { DeskStore } from './desk-store.ts';
import { lastSize } from './last-size.ts';
import { createLoupe } from './loupe.ts';
import { pictureLevels } from './picture-levels.ts';
import { listenToPointers } from './pointers.ts';
import { RegionLayer } from './region-layer.tsx';
import { PICTURE_ID, usePictureFocus } from './use-bench-keys.ts';
import { createViewer, type View, type Viewer } from './viewer.ts';

export interface PictureStageProps {
  photo: PhotoDetailView;
  tallness: number;
  store: DeskStore;
  bench: BenchState;
  tags: readonly BenchTag[];
  /** Filled while there is a picture to look at. */
  viewer: RefObject<Viewer | null>;
  onDrawn: () => void;
  mayDraw: boolean;
  /** What the next drawing is placed as without being asked. */
  rowNext: Entry | null;
}

/** Phones of some makes draw nothing at all beyond 16.7 megapixels on one canvas. */
const MAX_PIXELS = { phone: 16_700_000, desk: 60_000_000 };

/** The picture with what is drawn on it. */
export function PictureStage(props: PictureStageProps) {
  const { t } = useWords();
  const { photo } = props;
  const {
    tool,
    work: { draft },
  } = props.bench;
  const levels = useMemo(() => {
    const isPhone = window.matchMedia('(pointer: coarse)').matches;
    return pictureLevels(photo, isPhone ? MAX_PIXELS.phone : MAX_PIXELS.desk);
  }, [photo]);
  const [round, setRound] = useState(0);
  const hasOriginal = levels.at(-1)?.source === 'photoWhole';
  if (levels.length === 0) {
    return (
      <p className="bench-stage bench-stage-empty">
        {photo.pictures === 'pending' ? t('bench.notYet') : t('bench.cannotShow')}
      </p>
    );
  }
  const isSmaller = !hasOriginal && Math.max(photo.width, photo.height) > 1600;
  return (
    <>
      <Picture key={round} {...props} levels={levels} onMissed={() => setRound(round + 1)} />
      <p className="soft bench-hint" role="status">
        {draft?.replaces === null ? t('bench.sayNow') : t(`bench.toolHelp.${tool}`)}
      </p>
      {isSmaller ? <p className="soft bench-hint">{t('bench.previewOnly')}</p> : null}
    </>
  );
}

type PictureProps = PictureStageProps & {
  levels: ReturnType<typeof pictureLevels>;
  /** The network is back, and the picture is still missing. */
  onMissed: () => void;
};

function Picture(props: PictureProps) {
  const { photo, tallness, store, bench, tags, viewer, onDrawn, onMissed, mayDraw, rowNext, levels } = props;
  const { t } = useWords();
  const element = useRef<HTMLDivElement>(null);
  const follow = useRef<((view: View) => void) | null>(null);
  const drawn = useRef(onDrawn);
  drawn.current = onDrawn;
  const [made, setMade] = useState<Viewer | null>(null);
  const [isSeen, setIsSeen] = useState(false);
  const seen = useRef(false);
  seen.current = isSeen;
  useMissedPicture(isSeen, onMissed);
  usePictureFocus();
  /** Smaller ones that come later are not worth a new viewer: it would take the drawing out of the hand. */
  const first = useRef(levels);
  useEffect(() => {
    if (!element.current) return undefined;
    const created = createViewer(element.current, {
      levels: first.current.map(({ source, width, height }) => ({
        url: addressOf(source, { photo: photo.id }),
        width,
        height,
      })),
      tallness,
      isStill: window.matchMedia('(prefers-reduced-motion: reduce)').matches,
      onView: (view) => follow.current?.(view),
      onSeen: () => setIsSeen(true),
    });
    const bench = () => store.get().bench;
    const loupe = createLoupe({ stage: element.current, viewer: created, tallness, bench });
    const stop = listenToPointers(created.surface, {
      viewer: created,
      tallness,
      bench,
      loupe,
      isReady: () => seen.current,
      lastSize: () => lastSize(store.tags()),
      crossed: (line) => crossedTag(store.tags(), bench().selected, line),
      tagAt: (id) => {
        const tag = store.tag(id);
        return tag ? { on: 'tag', tag } : null;
      },
      mayDraw,
      act: store.tell,
      onDrawn: () => drawn.current(),
    });
    viewer.current = created;
    setMade(created);
    return () => {
      stop();
      loupe.destroy();
      viewer.current = null;
      setMade(null);
      created.destroy();
    };
  }, [photo.id, tallness, store, viewer, mayDraw]);
  return (
    <div
      id={PICTURE_ID}
      className="bench-stage"
      style={{ '--tallness': tallness } as CSSProperties}
      tabIndex={0}
      role="group"
      aria-label={t('bench.picture')}
      aria-description={t(mayDraw ? 'bench.pictureHelp' : 'bench.toolHelp.look')}
    >
      <div ref={element} className="bench-viewer" />
      {isSeen ? null : <p className="bench-over">{t(mayDraw ? 'bench.coming' : 'common.loading')}</p>}
      {isSeen && rowNext ? <NextInRow entry={rowNext} /> : null}
      {made
        ? createPortal(
            <RegionLayer
              bench={bench}
              tags={tags}
              tallness={tallness}
              follow={follow}
              firstView={made.view}
              onSelect={(tag) => store.tell({ type: 'select', tag })}
            />,
            made.surface,
          )
        : null}
    </div>
  );
}

/** Where a thumb's eye is: what the next drawing will say. */
function NextInRow({ entry: { mark, stage } }: { entry: Entry }) {
  const { t } = useWords();
  if (mark === '' || stage === null) return null;
  return (
    <p className="bench-over bench-over-row" aria-hidden="true">
      {t('bench.row.over', { mark, stage: t(`common.stage.${stage}`) })}
    </p>
  );
}

/** A picture that did not come over a network that was away is asked for when that is back. */
function useMissedPicture(isSeen: boolean, onMissed: () => void): void {
  useEffect(() => {
    if (isSeen) return undefined;
    window.addEventListener('online', onMissed);
    return () => window.removeEventListener('online', onMissed);
  }, [isSeen, onMissed]);
}
