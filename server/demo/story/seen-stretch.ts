import type { ShownStretch } from '#domain/contract/frame-shapes';
import type { Grid } from '#domain/frame/grid';
import { familyAlong } from '#domain/frame/name-stretch';
import type { Axis } from '#domain/frame/set-out';
import { project, type Camera } from '../render/camera.ts';
import type { Kept } from '../render/truth/truth-file.ts';

/** 'whole', between which lines, or nothing that could be named. */
export type Seen = 'whole' | ShownStretch | null;

/** What of a member lies in a picture, as somebody would say it who counts lines: its ends, or from 二 to 四. */
export function seenStretch({ camera, width, height }: Kept, axis: Axis, grid: Grid): Seen {
  const isIn = (share: number) => isInPicture({ ...camera, width, height }, pointAt(axis, share));
  if (isIn(0) && isIn(1)) return 'whole';
  // No line names a part of what stands: it is said of all of it, where most of it is there.
  if (axis.runs === 'upright') return TENTHS.filter(isIn).length > MOST_TENTHS ? 'whole' : null;
  const lines = crossedLines(axis, grid).filter(({ share }) => isIn(share));
  const [first, last] = [lines[0], lines.at(-1)];
  return first && last && first !== last ? { from: first.label, to: last.label } : null;
}

const TENTHS = Array.from({ length: 11 }, (_, i) => i / 10);
const MOST_TENTHS = 6;

function isInPicture(camera: Camera, [x, y, z]: readonly [number, number, number]): boolean {
  const seen = project(camera, [x, y, z]);
  return seen.depth > 0 && seen.x >= 0 && seen.x <= camera.width && seen.y >= 0 && seen.y <= camera.height;
}

function pointAt({ start, end }: Axis, share: number) {
  return (['x', 'y', 'z'] as const).map((on) => start[on] + share * (end[on] - start[on])) as [
    number,
    number,
    number,
  ];
}

/** The lines that it meets one after the other, with how far along it; none of what stands or runs askew. */
function crossedLines(axis: Axis, grid: Grid): { label: string; share: number }[] {
  const family = familyAlong(axis);
  if (family === null) return [];
  const on = family === 'first' ? 'x' : 'y';
  return grid[family].lines
    .map(({ label, at }) => ({ label, share: (at - axis.start[on]) / (axis.end[on] - axis.start[on]) }))
    .filter(({ share }) => share > -0.01 && share < 1.01);
}
