import type { UnitPoint } from '#domain/photo/region';
import type { BenchTag } from './bench-tags.ts';
import { bySize } from './region-shape.ts';
import { splitAlong } from './split-region.ts';

/** The tag whose region a line splits: the chosen one before all others, else the smallest. */
export function crossedTag(
  tags: readonly BenchTag[],
  selected: string | null,
  line: readonly [UnitPoint, UnitPoint],
): BenchTag | null {
  const split = tags.filter(({ state, region }) => state === 'standing' && splitAlong(region, line) !== null);
  return split.find(({ id }) => id === selected) ?? bySize(split).at(-1) ?? null;
}
