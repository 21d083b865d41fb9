import { boundingBox } from '#domain/photo/region';
import { STROKES, strokeStates } from '../../parts/stage-glyph.ts';
import { VERDICT_PATHS } from '../../parts/verdict-paths.ts';
import type { BenchTag } from './bench-tags.ts';
import { labelSize, signedVerdict } from './place-labels.ts';
import { onSheet } from './region-shape.ts';

export interface TagLabelProps {
  tag: BenchTag;
  tallness: number;
  /** In pixels from the corner of the region. */
  at: readonly [number, number];
  isSelected: boolean;
}

/**
 * A paper label on the picture: the stage in strokes of 正, then the mark. The strokes ahead are always there,
 * pale: three strokes alone would read as 下, which says where a timber goes.
 */
export function TagLabel({ tag, tallness, at: [dx, dy], isSelected }: TagLabelProps) {
  const { id, mark, stage, region } = tag;
  const { x, y } = boundingBox(region);
  const [left, top] = onSheet([x, y], tallness);
  const verdict = signedVerdict(tag);
  const size = labelSize(mark, verdict !== null);
  return (
    <g
      className={isSelected ? 'bench-label bench-label-selected' : 'bench-label'}
      data-hit={`tag:${id}`}
      style={{
        transform: `translate(${left}px, ${top}px) scale(var(--inverse, 1)) translate(${dx}px, ${dy}px)`,
      }}
    >
      <rect width={size.width} height={size.height} />
      <g transform="translate(3 3) scale(0.6)">
        {strokeStates(stage, null).map((state, i) => (
          <path key={i} className={`bench-stroke-${state}`} d={STROKES[i]} />
        ))}
      </g>
      <text x="21" y="15">
        {mark}
      </text>
      {verdict === null ? null : (
        <g className="bench-label-verdict" transform={`translate(${size.width - 16} 4)`}>
          <path className="bench-verdict-line" d={VERDICT_PATHS[verdict].line} />
          <path className="bench-verdict-fill" d={VERDICT_PATHS[verdict].fill} />
        </g>
      )}
    </g>
  );
}
