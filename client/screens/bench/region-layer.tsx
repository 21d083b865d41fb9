import { useLayoutEffect, useMemo, useRef, useState, type RefObject } from 'react';
import { useWords } from '../../i18n/use-words.ts';
import type { BenchState } from './bench-model.ts';
import { boxInHand, cutInHand } from './gestures.ts';
import type { BenchTag } from './bench-tags.ts';
import { DraftShape, OpenOutline } from './draft-shape.tsx';
import { placeLabels } from './place-labels.ts';
import { keepInPlace } from './keep-in-place.ts';
import { bySize, linePath, regionPath } from './region-shape.ts';
import { TagLabel } from './tag-label.tsx';
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

const CORNER = [0, 0] as const;

/** The regions over the picture. */
export function RegionLayer({ bench, tags, tallness, follow, firstView, onSelect }: RegionLayerProps) {
  const { t } = useWords();
  const layer = useRef<HTMLDivElement>(null);
  const sheet = useRef<SVGGElement>(null);
  const [seenWidth, setSeenWidth] = useState(() => firstView().width);
  useLayoutEffect(() => {
    if (!layer.current || !sheet.current) return undefined;
    return keepInPlace(layer.current, sheet.current, { follow, firstView, onRest: setSeenWidth });
  }, [follow, firstView]);
  const { draft, corners, waiting } = bench.work;
  const cut = cutInHand(bench);
  const box = boxInHand(bench);
  const replaced = draft?.replaces ?? null;
  const standing = useMemo(
    () => bySize(tags.filter((tag) => tag.state === 'standing' && tag.id !== replaced)),
    [tags, replaced],
  );
  const labels = useMemo(() => placeLabels(standing, seenWidth, tallness), [standing, seenWidth, tallness]);
  return (
    <div ref={layer} className="bench-moving">
      <svg className={`bench-layer bench-layer-${bench.tool}`} role="group" aria-label={t('bench.picture')}>
        <g ref={sheet}>
          {standing.map((tag) => (
            <TagShape
              key={tag.id}
              tag={tag}
              tallness={tallness}
              isSelected={tag.id === bench.selected}
              onSelect={() => onSelect(tag.id)}
            />
          ))}
          {/* Above all outlines, so that none goes through a mark. */}
          <g aria-hidden="true">
            {standing.map((tag) => (
              <TagLabel
                key={tag.id}
                tag={tag}
                tallness={tallness}
                at={labels.get(tag.id) ?? CORNER}
                isSelected={tag.id === bench.selected}
              />
            ))}
          </g>
          {draft ? (
            <DraftShape
              draft={draft}
              tallness={tallness}
              seenWidth={seenWidth}
              replaced={tags.find(({ id }) => id === draft.replaces)}
            />
          ) : null}
          {corners.length > 0 ? (
            <OpenOutline corners={corners} hover={bench.hover} tallness={tallness} />
          ) : null}
          {waiting.map((region, i) => (
            <path key={i} className="bench-waiting" d={regionPath(region, tallness)} />
          ))}
          {cut ? <path className="bench-cut" d={linePath(cut, tallness)} /> : null}
          {box ? <path className="bench-drawing" d={regionPath(box, tallness)} /> : null}
        </g>
      </svg>
    </div>
  );
}
