import type { ShownStretch } from '#domain/contract/frame-shapes';
import { pointOn } from '#domain/frame/axis-of';
import type { LinePlace } from '#domain/frame/grid';
import type { GridReader } from '#domain/frame/grid-reader';
import { familyAlong } from '#domain/frame/name-stretch';
import type { Axis } from '#domain/frame/set-out';

/** Half a post: what ends so near a line ends at it. Common practice. */
const AT_LINE_MM = 75;

/**
 * Lines that a member reaches, from its start on: between two of them it may be shown. Empty for what stands,
 * runs askew or lies within one bay, and so is always shown whole. `withHalf`: the middles of bays too.
 */
export function linesAlong(axis: Axis, reader: GridReader, withHalf = true): LinePlace[] {
  const family = familyAlong(axis);
  if (family === null) return [];
  const ends = [axis.start, axis.end].map((point) => (family === 'first' ? point.x : point.y));
  const [low, high] = [Math.min(...ends) - AT_LINE_MM, Math.max(...ends) + AT_LINE_MM];
  const whole = new Set(reader.grid[family].lines.map(({ label }) => label));
  const reached = reader.places(family).filter(({ at }) => at >= low && at <= high);
  if (reached.filter(({ label }) => whole.has(label)).length <= 2) return [];
  return withHalf ? reached : reached.filter(({ label }) => whole.has(label));
}

/**
 * From which line to which a photo likely shows a member, by what else is tagged on it: the outermost lines
 * at which something stands. null where fewer than two lines are known.
 */
export function guessStretch(axis: Axis, others: readonly Axis[], reader: GridReader): ShownStretch | null {
  const family = familyAlong(axis);
  const lines = linesAlong(axis, reader, false);
  if (family === null || lines.length === 0) return null;
  const at = others.flatMap((other) => {
    if (other.runs !== 'upright') return [];
    const foot = pointOn(other, 0);
    const here = family === 'first' ? foot.x : foot.y;
    const near = lines.find((line) => Math.abs(line.at - here) <= AT_LINE_MM);
    return near ? [near] : [];
  });
  const byPlace = [...at].sort((a, b) => a.at - b.at);
  const [first, last] = [byPlace[0], byPlace.at(-1)];
  return first && last && first !== last ? { from: first.label, to: last.label } : null;
}
