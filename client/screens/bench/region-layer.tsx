import { useLayoutEffect, useMemo, useRef, useState, type RefObject } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import type { BenchState } from './bench-state.ts';
import { boxInHand } from './bench-state.ts';
import type { BenchTag } from './bench-tags.ts';
import { DraftShape, OpenOutline } from './draft-shape.tsx';
import { placeLabels } from './place-labels.ts';
import { SHEET, bySize, regionPath } from './region-shape.ts';
import { TagShape } from './tag-shape.tsx';
import type { View } from './viewer.ts';

export interface RegionLayerProps {
  bench: BenchState;
  tags: readonly BenchTag[];
  tallness: number;
  /** Handed out so that the viewer can move the drawing without asking React, sixty times a second. */
  follow: RefObject<((view: View) => void) | null>;
  firstView: () => View;
  onSelect: (tag: string) => void;
}

/** Labels find their places anew once the picture has come to rest. */
const REST_MS = 80;
const CORNER = [0, 0] as const;

/** The regions over the picture. */
export function RegionLayer({ bench, tags, tallness, follow, firstView, onSelect }: RegionLayerProps) {
  const { t } = useWords();
  const svg = useRef<SVGSVGElement>(null);
  const sheet = useRef<SVGGElement>(null);
  const [seenWidth, setSeenWidth] = useState(() => firstView().width);
  useLayoutEffect(() => {
    let rest: ReturnType<typeof setTimeout> | undefined;
    const move = ({ x, y, width }: View) => {
      const scale = width / SHEET;
      sheet.current?.setAttribute('transform', `translate(${x} ${y}) scale(${scale})`);
      svg.current?.style.setProperty('--inverse', String(1 / scale));
      clearTimeout(rest);
      rest = setTimeout(() => setSeenWidth(width), REST_MS);
    };
    follow.current = move;
    move(firstView());
    return () => {
      clearTimeout(rest);
      follow.current = null;
    };
  }, [follow, firstView]);
  const { draft, corners } = bench.work;
  const box = boxInHand(bench);
  const replaced = draft?.replaces ?? null;
  const standing = useMemo(
    () => bySize(tags.filter((tag) => tag.state === 'standing' && tag.id !== replaced)),
    [tags, replaced],
  );
  const labels = useMemo(() => placeLabels(standing, seenWidth, tallness), [standing, seenWidth, tallness]);
  return (
    <svg
      ref={svg}
      className={`bench-layer bench-layer-${bench.tool}`}
      role="group"
      aria-label={t('bench.picture')}
    >
      <g ref={sheet}>
        {standing.map((tag) => (
          <TagShape
            key={tag.id}
            tag={tag}
            tallness={tallness}
            labelAt={labels.get(tag.id) ?? CORNER}
            isSelected={tag.id === bench.selected}
            onSelect={() => onSelect(tag.id)}
          />
        ))}
        {draft ? (
          <DraftShape
            draft={draft}
            tallness={tallness}
            replaced={tags.find(({ id }) => id === draft.replaces)}
          />
        ) : null}
        {corners.length > 0 ? (
          <OpenOutline corners={corners} hover={bench.hover} tallness={tallness} />
        ) : null}
        {box ? <path className="bench-drawing" d={regionPath(box, tallness)} /> : null}
      </g>
    </svg>
  );
}
