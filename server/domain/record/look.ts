import type { Triple } from '../frame/clip.ts';
import type { Family, FamilyName, Grid, GridLine } from '../frame/grid.ts';
import type { Point } from '../frame/set-out.ts';
import { groupBy } from '../group-by.ts';

/** Towards a line of the grid, or over one's head or before one's feet. */
export type Look = { readonly family: FamilyName; readonly line: string } | 'up' | 'down';

/** Steeper than 60° one looks up or down; what is flatter still lies towards some line. Common practice. */
const STEEP = Math.tan(Math.PI / 3);

/** Which ways an eye looks at points (house coordinates, mm), the way to most of them first. */
export function looksOf(eye: Point, points: readonly Triple[], grid: Grid): Look[] {
  const looks = groupBy(
    points.map(([x, y, z]): Look => {
      const [dx, dy, dz] = [x - eye.x, y - eye.y, z - eye.z];
      if (Math.abs(dz) > STEEP * Math.hypot(dx, dy)) return dz > 0 ? 'up' : 'down';
      const isFirst = Math.abs(dx) >= Math.abs(dy);
      const line = isFirst ? lineTowards(eye.x, x, grid.first) : lineTowards(eye.y, y, grid.second);
      return { family: isFirst ? 'first' : 'second', line: line.label };
    }),
    (look) => JSON.stringify(look),
  );
  return [...looks.values()].sort((a, b) => b.length - a.length).flatMap(([look]) => look ?? []);
}

/** Of the lines before one's eyes the one nearest to what is looked at; what lies behind is no direction. */
function lineTowards(from: number, to: number, { lines }: Family): GridLine {
  const before = lines.filter(({ at }) => Math.sign(at - from) === Math.sign(to - from));
  return (before.length > 0 ? before : lines).reduce((near, one) =>
    Math.abs(one.at - to) < Math.abs(near.at - to) ? one : near,
  );
}
