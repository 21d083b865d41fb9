import type { UnitPoint } from '#domain/photo/region';
import { useWords } from '../../i18n/use-words.ts';
import type { Draft } from './bench-model.ts';
import type { BenchTag } from './bench-tags.ts';
import { handlePoints } from './geometry.ts';
import { linePath, onSheet, regionPath } from './region-shape.ts';

export interface DraftShapeProps {
  draft: Draft;
  replaced: BenchTag | undefined;
  tallness: number;
}

/** The region that is not placed yet, with the handles that change it. */
export function DraftShape({ draft: { region }, replaced, tallness }: DraftShapeProps) {
  const { t } = useWords();
  const path = regionPath(region, tallness);
  return (
    <g className="bench-draft">
      <g
        data-hit="draft"
        role="button"
        tabIndex={0}
        aria-label={replaced ? t('bench.draftOf', { mark: replaced.mark }) : t('bench.draft')}
      >
        <path className="bench-halo" d={path} />
        <path className="bench-line" d={path} />
      </g>
      {handlePoints(region).map((point, i) => (
        <Handle
          key={i}
          index={i}
          isSide={region.shape === 'rectangle' && i > 3}
          at={onSheet(point, tallness)}
        />
      ))}
    </g>
  );
}

function Handle({ index, isSide, at: [x, y] }: { index: number; isSide: boolean; at: [number, number] }) {
  return (
    <g
      className={isSide ? 'bench-handle bench-handle-side' : 'bench-handle'}
      data-hit={`handle:${index}`}
      aria-hidden="true"
      style={{ transform: `translate(${x}px, ${y}px) scale(var(--inverse, 1))` }}
    >
      <circle className="bench-handle-reach" />
      <rect x="-5" y="-5" width="10" height="10" />
    </g>
  );
}

export interface OpenOutlineProps {
  corners: readonly UnitPoint[];
  hover: UnitPoint | null;
  tallness: number;
}

/** An outline that is still being drawn; its first corner is large, since a press on it closes it. */
export function OpenOutline({ corners, hover, tallness }: OpenOutlineProps) {
  const points = [...corners, ...(hover ? [hover] : [])];
  return (
    <g className="bench-open">
      <path className="bench-drawing" d={linePath(points, tallness)} />
      {corners.map((corner, i) => {
        const [x, y] = onSheet(corner, tallness);
        return (
          <circle
            key={i}
            r={i === 0 ? 9 : 4}
            style={{ transform: `translate(${x}px, ${y}px) scale(var(--inverse, 1))` }}
          />
        );
      })}
    </g>
  );
}
