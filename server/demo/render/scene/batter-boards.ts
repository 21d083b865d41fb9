import type { Vec } from '../vec.ts';
import type { HouseState } from './house-state.ts';
import { putStick, type Site } from './site.ts';

/** How far outside the house the boards stand, so that nobody falls over them at the stones. */
const OUT_MM = 700;
const BOARD_Z_MM = 620;
const STAKE_EVERY_MM = 1818;

/** Stakes, boards along them, and from board to board a string over each line: 遣り方. Common practice. */
export function addBatterBoards(site: Site, { reader }: Pick<HouseState, 'reader'>): void {
  const { first, second } = reader.grid;
  const [xs, ys] = [first.lines.map(({ at }) => at), second.lines.map(({ at }) => at)];
  const [right, far] = [Math.max(...xs), Math.max(...ys)];
  for (const y of [-OUT_MM, far + OUT_MM]) boarded(site, right, (along) => [along, y]);
  for (const x of [-OUT_MM, right + OUT_MM]) boarded(site, far, (along) => [x, along]);
  for (const x of xs) string(site, [x, -OUT_MM], [x, far + OUT_MM]);
  for (const y of ys) string(site, [-OUT_MM, y], [right + OUT_MM, y]);
}

function boarded(site: Site, long: number, at: (along: number) => readonly [number, number]): void {
  for (let along = -OUT_MM; along <= long + OUT_MM; along += STAKE_EVERY_MM) {
    const [x, y] = at(along);
    const top = BOARD_Z_MM + 110 + site.random.about(60);
    putStick(site, [[x, y, -200] as Vec, [x + site.random.about(8), y, top]], [42, 42], 'board');
  }
  const [from, to] = [at(-OUT_MM - 200), at(long + OUT_MM + 200)];
  putStick(site, [[...from, BOARD_Z_MM - 45] as Vec, [...to, BOARD_Z_MM - 45] as Vec], [15, 90], 'board');
}

function string(site: Site, from: readonly [number, number], to: readonly [number, number]): void {
  putStick(site, [[...from, BOARD_Z_MM + 4] as Vec, [...to, BOARD_Z_MM + 4] as Vec], [3, 3], 'rope');
}
