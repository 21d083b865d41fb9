import type { Grid } from '#domain/frame/grid';
import { gridReader } from '#domain/frame/grid-reader';
import type { Mm } from '#domain/frame/length';
import type { Axis, Point } from '#domain/frame/set-out';
import { distance } from '#domain/frame/axis-of';

/** い to へ and 一 to 六, a bay of 1820 mm apart unless said otherwise; floors at 450 and 3250, wall plate at 6000. */
export const BAY = 1820;
const FIRST = ['い', 'ろ', 'は', 'に', 'ほ', 'へ'];
const SECOND = ['一', '二', '三', '四', '五', '六'];

export function someGrid(bay = BAY, count = 6): Grid {
  const lines = (labels: readonly string[]) =>
    labels.slice(0, count).map((label, i) => ({ label, at: (i * bay) as Mm }));
  return {
    first: { lines: lines(FIRST), runs: 'leftward' },
    second: { lines: lines(SECOND), runs: 'downward' },
    levels: [
      { label: '1F', height: 450 as Mm },
      { label: '2F', height: 3250 as Mm },
      { label: '軒', height: 6000 as Mm },
    ],
  };
}

export const someReader = gridReader(someGrid());

export const pointAt = (x: number, y: number, z: number): Point => ({ x: x as Mm, y: y as Mm, z: z as Mm });

export function axisBetween(
  start: readonly [number, number, number],
  end: readonly [number, number, number],
  section: readonly [number, number] = [105, 105],
): Axis {
  const [from, to] = [pointAt(...start), pointAt(...end)];
  const isUpright = start[0] === end[0] && start[1] === end[1];
  return {
    start: from,
    end: to,
    length: distance(from, to),
    width: section[0] as Mm,
    depth: section[1] as Mm,
    runs: isUpright ? 'upright' : start[2] === end[2] ? 'level' : 'sloping',
    level: null,
    assumed: [],
  };
}
