import { useLayoutEffect, useRef, type RefObject } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import type { BenchState } from './bench-state.ts';
import { boxInHand } from './bench-state.ts';
import type { BenchTag } from './bench-tags.ts';
import { DraftShape, OpenOutline } from './draft-shape.tsx';
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

/** The regions over the picture. */
export function RegionLayer({ bench, tags, tallness, follow, firstView, onSelect }: RegionLayerProps) {
  const { t } = useWords();
  const svg = useRef<SVGSVGElement>(null);
  const sheet = useRef<SVGGElement>(null);
  useLayoutEffect(() => {
    const move = ({ x, y, width }: View) => {
      const scale = width / SHEET;
      sheet.current?.setAttribute('transform', `translate(${x} ${y}) scale(${scale})`);
      svg.current?.style.setProperty('--inverse', String(1 / scale));
    };
    follow.current = move;
    move(firstView());
    return () => {
      follow.current = null;
    };
  }, [follow, firstView]);
  const { draft, corners } = bench.work;
  const box = boxInHand(bench);
  const standing = tags.filter((tag) => tag.state === 'standing' && tag.id !== draft?.replaces);
  return (
    <svg
      ref={svg}
      className={`bench-layer bench-layer-${bench.tool}`}
      role="group"
      aria-label={t('bench.picture')}
    >
      <g ref={sheet}>
        {bySize(standing).map((tag) => (
          <TagShape
            key={tag.id}
            tag={tag}
            tallness={tallness}
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
