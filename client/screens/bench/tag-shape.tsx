import { useWords } from '../../i18n/use-words.ts';
import type { BenchTag } from './bench-tags.ts';
import { regionPath } from './region-shape.ts';

export interface TagShapeProps {
  tag: BenchTag;
  tallness: number;
  isSelected: boolean;
  onSelect: () => void;
}

/** The outline of a tag in the picture. */
export function TagShape({ tag, tallness, isSelected, onSelect }: TagShapeProps) {
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
    </g>
  );
}
