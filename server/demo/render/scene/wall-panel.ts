import type { GridReader } from '#domain/frame/grid-reader';
import { addScaled, type Vec } from '../vec.ts';
import type { WallZone } from './house-state.ts';

/** The field of a wall between two posts. */
export interface Panel {
  readonly wide: number;
  readonly bottom: number;
  readonly top: number;
  /** A point so far from the first post's face, at a height, and so far out of the wall's middle. */
  readonly at: (along: number, z: number, out: number) => Vec;
  readonly along: Vec;
  readonly side: Vec;
}

/** Half a post, and what the hand leaves between it and the lath. */
const POST_MM = 63;

/** Throws RangeError for lines that the grid does not have. */
export function panelOf({ family, line, from, to, bottom, top }: WallZone, reader: GridReader): Panel {
  const other = family === 'first' ? 'second' : 'first';
  const place = (label: string, of: 'first' | 'second') => {
    const read = reader.line(label, of);
    if (!read.ok) throw new RangeError(`There is no line ${label}.`);
    return read.value.at;
  };
  const ends = [place(from, other), place(to, other)];
  const [beginning, end] = [Math.min(...ends), Math.max(...ends)];
  const standing = place(line, family);
  const along: Vec = family === 'first' ? [0, 1, 0] : [1, 0, 0];
  const side: Vec = family === 'first' ? [1, 0, 0] : [0, 1, 0];
  const origin: Vec = addScaled(addScaled([0, 0, 0], side, standing), along, beginning + POST_MM);
  return {
    ...{ bottom, top, along, side, wide: end - beginning - 2 * POST_MM },
    at: (far, z, out) => {
      const [x, y] = addScaled(addScaled(origin, along, far), side, out);
      return [x, y, z];
    },
  };
}
