import type { Triple } from '../frame/clip.ts';
import type { FamilyName, Grid } from '../frame/grid.ts';
import type { Point } from '../frame/set-out.ts';
import { groupBy } from '../group-by.ts';

/** Towards a line of the grid, or over one's head or before one's feet. */
export type Look = { readonly family: FamilyName; readonly line: string } | 'up' | 'down';

/** Which ways an eye looks at points (house coordinates, mm), the way to most of them first. */
export function looksOf(eye: Point, points: readonly Triple[], grid: Grid): Look[] {
  const looks = groupBy(
    points.map(([x, y, z]): Look => {
      const [dx, dy, dz] = [x - eye.x, y - eye.y, z - eye.z];
      if (Math.abs(dz) > Math.hypot(dx, dy)) return dz > 0 ? 'up' : 'down';
      const [family, at] = Math.abs(dx) >= Math.abs(dy) ? (['first', x] as const) : (['second', y] as const);
      const line = grid[family].lines.reduce((near, one) =>
        Math.abs(one.at - at) < Math.abs(near.at - at) ? one : near,
      );
      return { family, line: line.label };
    }),
    (look) => JSON.stringify(look),
  );
  return [...looks.values()].sort((a, b) => b.length - a.length).flatMap(([look]) => look ?? []);
}
