import type { UnitPoint } from '#domain/photo/region';
import type { BenchTag } from './bench-tags.ts';

/** Width and height of the box that was placed last on this photo; null where there is none. */
export function lastSize(tags: readonly BenchTag[]): UnitPoint | null {
  const boxes = tags
    .filter(({ state, region }) => state === 'standing' && region.shape === 'rectangle')
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const region = boxes.at(-1)?.region;
  return region?.shape === 'rectangle' ? [region.w, region.h] : null;
}
