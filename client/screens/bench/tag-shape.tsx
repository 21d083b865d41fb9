import { boundingBox } from '#domain/photo/region';
import { useWords } from '../../i18n/use-words.ts';
import { STROKES, strokeStates } from '../../parts/stage-glyph.ts';
import type { BenchTag } from './bench-tags.ts';
import { onSheet, regionPath } from './region-shape.ts';

export interface TagShapeProps {
  tag: BenchTag;
  tallness: number;
  /** Where its label goes, in pixels from the corner of the region. */
  labelAt: readonly [number, number];
  isSelected: boolean;
  onSelect: () => void;
}

/** A tag in the picture: its outline, its mark, and its stage in strokes of 正. */
export function TagShape({ tag, tallness, labelAt, isSelected, onSelect }: TagShapeProps) {
  const { t } = useWords();
  const { mark, stage, by, region } = tag;
  const path = regionPath(region, tallness);
  const words = t('bench.regionBy', {
    mark,
    stage: t(`common.stage.${stage}`),
    who: by?.name ?? t('common.nobody'),
  });
  return (
    <g
      className={`bench-tag${isSelected ? ' bench-tag-selected' : ''}${tag.unsent ? ' bench-tag-unsent' : ''}`}
      data-hit={`tag:${tag.id}`}
      data-mark={mark}
      role="button"
      tabIndex={0}
      aria-pressed={isSelected}
      aria-label={tag.unsent ? `${words}, ${t('bench.unsent.state')}` : words}
      onFocus={onSelect}
    >
      <path className="bench-halo" d={path} />
      <path className="bench-line" d={path} />
      <TagLabel tag={tag} tallness={tallness} at={labelAt} />
    </g>
  );
}

interface TagLabelProps {
  tag: BenchTag;
  tallness: number;
  at: readonly [number, number];
}

function TagLabel({ tag: { mark, stage, region }, tallness, at: [dx, dy] }: TagLabelProps) {
  const { x, y } = boundingBox(region);
  const [left, top] = onSheet([x, y], tallness);
  const strokes = strokeStates(stage, null).flatMap((state, i) =>
    state === 'passed' ? (STROKES[i] ?? []) : [],
  );
  return (
    <g
      className="bench-label"
      aria-hidden="true"
      style={{
        transform: `translate(${left}px, ${top}px) scale(var(--inverse, 1)) translate(${dx}px, ${dy}px)`,
      }}
    >
      <g transform="translate(3 3) scale(0.6)">
        <path className="bench-label-under" d={strokes.join('')} />
        <path d={strokes.join('')} />
      </g>
      <text x="21" y="15">
        {mark}
      </text>
    </g>
  );
}
