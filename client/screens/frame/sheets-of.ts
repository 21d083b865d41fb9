import type { Drawable, Sheet } from '#domain/frame/drawing/sheet';
import { elevations } from '#domain/frame/drawing/elevations';
import { plans } from '#domain/frame/drawing/plans';

interface Drawn {
  readonly of: Drawable;
  readonly sheets: readonly Sheet[];
}

/** By grid: an answer that is read again keeps the parts that are the same. */
const drawn = new WeakMap<object, Drawn>();

/** All sheets of a frame; those of before where nothing that is drawn has moved, as after a tag. */
export function sheetsOf(frame: Drawable): readonly Sheet[] {
  const { grid } = frame;
  const before = grid && drawn.get(grid);
  if (before && isSame(before.of, frame)) return before.sheets;
  const sheets = [...elevations(frame), ...plans(frame)];
  if (grid) drawn.set(grid, { of: frame, sheets });
  return sheets;
}

function isSame(a: Drawable, b: Drawable): boolean {
  return (
    a.members.length === b.members.length &&
    a.coverings.length === b.coverings.length &&
    a.members.every(({ mark, axis }, i) => mark === b.members[i]?.mark && axis === b.members[i].axis) &&
    a.coverings.every(({ id, zone }, i) => id === b.coverings[i]?.id && zone === b.coverings[i].zone)
  );
}
