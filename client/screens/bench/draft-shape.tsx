import type { Region, UnitPoint } from '#domain/photo/region';
import { useWords } from '../../i18n/use-words.ts';
import type { Draft } from './bench-model.ts';
import type { BenchTag } from './bench-tags.ts';
import { handlePoints } from './geometry.ts';
import { linePath, onSheet, regionPath } from './region-shape.ts';

export interface DraftShapeProps {
  draft: Draft;
  replaced: BenchTag | undefined;
  tallness: number;
  /** Of the whole picture, in pixels. */
  seenWidth: number;
}

/** The region that is not placed yet, with the handles that change it. */
export function DraftShape({ draft: { region }, replaced, tallness, seenWidth }: DraftShapeProps) {
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
      {handlePoints(region).map((point, i) =>
        hasRoom(region, i, seenWidth, tallness) ? (
          <Handle key={i} index={i} isBox={region.shape === 'rectangle'} at={onSheet(point, tallness)} />
        ) : null,
      )}
    </g>
  );
}

/** On a small box the marks of its sides would hide what is in it; its corners are enough. */
const SIDE_ROOM = 72;

function hasRoom(region: Region, handle: number, seenWidth: number, tallness: number): boolean {
  if (region.shape === 'polygon' || handle < 4) return true;
  const isLevel = handle % 2 === 0;
  return (isLevel ? region.w * seenWidth : region.h * seenWidth * tallness) >= SIDE_ROOM;
}

/** As a carpenter marks a corner and a line: angles and short strokes, nothing that covers the wood. */
const MARKS = [
  'M0 13V0H13',
  'M-13 0H0V13',
  'M0 -13V0H-13',
  'M13 0H0V-13',
  'M-8 0H8',
  'M0 -8V8',
  'M-8 0H8',
  'M0 -8V8',
] as const;
const POINT = 'M-6 0L0 -6L6 0L0 6Z';

function Handle({ index, isBox, at: [x, y] }: { index: number; isBox: boolean; at: [number, number] }) {
  const path = (isBox ? MARKS[index] : undefined) ?? POINT;
  return (
    <g
      className={isBox && index > 3 ? 'bench-handle bench-handle-side' : 'bench-handle'}
      data-hit={`handle:${index}`}
      aria-hidden="true"
      style={{ transform: `translate(${x}px, ${y}px) scale(var(--inverse, 1))` }}
    >
      <circle className="bench-handle-reach" />
      <path className="bench-handle-under" d={path} />
      <path className="bench-handle-line" d={path} />
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
