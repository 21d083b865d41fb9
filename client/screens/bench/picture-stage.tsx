import { useEffect, useMemo, useRef, useState, type CSSProperties, type RefObject } from 'react';
import { createPortal } from 'react-dom';
import type { PhotoDetailView } from '#domain/contract/views';
import { addressOf } from '../../api/address.ts';
import { useWords } from '../../i18n/use-words.ts';
import type { BenchState } from './bench-model.ts';
import type { BenchTag } from './bench-tags.ts';
import { crossedTag } from './crossed-tag.ts';
import type { DeskStore } from './desk-store.ts';
import { createLoupe } from './loupe.ts';
import { pictureLevels } from './picture-levels.ts';
import { listenToPointers } from './pointers.ts';
import { RegionLayer } from './region-layer.tsx';
import { PICTURE_ID } from './use-bench-keys.ts';
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
  const hasOriginal = levels.at(-1)?.source === 'photoOriginal';
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
      <Picture {...props} levels={levels} />
      <p className="soft bench-hint" role="status">
        {draft?.replaces === null ? t('bench.sayNow') : t(`bench.toolHelp.${tool}`)}
      </p>
      {isSmaller ? <p className="soft bench-hint">{t('bench.previewOnly')}</p> : null}
    </>
  );
}

type PictureProps = PictureStageProps & { levels: ReturnType<typeof pictureLevels> };

function Picture({ photo, tallness, store, bench, tags, viewer, onDrawn, levels }: PictureProps) {
  const { t } = useWords();
  const element = useRef<HTMLDivElement>(null);
  const follow = useRef<((view: View) => void) | null>(null);
  const drawn = useRef(onDrawn);
  drawn.current = onDrawn;
  const [made, setMade] = useState<Viewer | null>(null);
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
    });
    const bench = () => store.get().bench;
    const loupe = createLoupe({ stage: element.current, viewer: created, tallness, bench });
    const stop = listenToPointers(created.surface, {
      viewer: created,
      tallness,
      bench,
      loupe,
      crossed: (line) => crossedTag(store.tags(), bench().selected, line),
      tagAt: (id) => {
        const tag = store.tag(id);
        return tag ? { on: 'tag', tag } : null;
      },
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
  }, [photo.id, tallness, store, viewer]);
  return (
    <div
      id={PICTURE_ID}
      className="bench-stage"
      style={{ '--tallness': tallness } as CSSProperties}
      tabIndex={0}
      role="group"
      aria-label={t('bench.picture')}
      aria-description={t('bench.pictureHelp')}
    >
      <div ref={element} className="bench-viewer" />
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
