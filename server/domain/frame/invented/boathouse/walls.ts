import type { Lines } from './lines.ts';

/** A wall from line to line: on `line`, in the direction of the other family. */
export interface WallRun {
  readonly family: 'first' | 'second';
  readonly line: string;
  readonly from: string;
  readonly to: string;
  readonly name: string;
  /** Crossings of its ends. */
  readonly ends: readonly [from: string, to: string];
}

/** The ground floor's earthen walls: three outer sides as far as the slip, its own two walls, no wall at its mouth. */
export function lowerWalls(lines: Lines): WallRun[] {
  const { westmost, eastmost, lakeside, hillside, slip } = lines;
  return [
    across(lines, westmost, '西の壁'),
    across(lines, slip, '舟入りの壁'),
    across(lines, eastmost, '東の壁'),
    along(lakeside, [westmost, slip], '湖側の壁'),
    along(hillside, [westmost, eastmost], '山側の壁'),
  ];
}

/** Of the loft: the knee walls under the eaves are of earth, the gables of boards. */
export function kneeWalls({ westmost, eastmost, lakeside, hillside }: Lines): WallRun[] {
  return [
    along(lakeside, [westmost, eastmost], '二階 湖側の腰壁'),
    along(hillside, [westmost, eastmost], '二階 山側の腰壁'),
  ];
}

export function gables(lines: Lines): WallRun[] {
  return [across(lines, lines.westmost, '西の妻壁'), across(lines, lines.eastmost, '東の妻壁')];
}

function across({ lakeside, hillside }: Lines, line: string, name: string): WallRun {
  return {
    ...{ family: 'first', line, from: lakeside, to: hillside, name },
    ends: [line + lakeside, line + hillside],
  };
}

function along(line: string, [from, to]: readonly [string, string], name: string): WallRun {
  return { family: 'second', line, from, to, name, ends: [from + line, to + line] };
}
