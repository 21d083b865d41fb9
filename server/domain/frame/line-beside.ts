import type { GridReader } from './grid-reader.ts';
import type { Zone } from './zone.ts';

/** The next line on one side of a wall, by which a crew names that side; null: nothing stands beyond it. */
export function lineBeside(
  { line, family }: Pick<Extract<Zone, { shape: 'wall' }>, 'line' | 'family'>,
  side: 'lower' | 'higher',
  reader: GridReader,
): string | null {
  const own = reader.line(line, family);
  if (!own.ok) return null;
  const sign = side === 'higher' ? 1 : -1;
  const beyond = reader.grid[family].lines.filter(({ at }) => (at - own.value.at) * sign > 1);
  const nearest = beyond.reduce<(typeof beyond)[number] | null>(
    (best, next) => (best === null || (next.at - best.at) * sign < 0 ? next : best),
    null,
  );
  return nearest?.label ?? null;
}
