import { block } from '../mesh/shapes.ts';
import { type Vec } from '../vec.ts';
import { put, some, type Site } from './site.ts';

export interface Neighbour {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly deep: number;
  readonly high: number;
  readonly turn: number;
}

const EAVES_MM = 550;
const RISE = 0.45;

/** A house of plain walls under a tiled roof, its windows toward whoever looks. */
export function addNeighbour(site: Site, house: Neighbour): void {
  const { x, y, wide, deep, high, turn } = house;
  put(site, block([x, y, -200], [wide, deep, high + 200], turn), 'houseWall');
  for (const side of [-1, 1]) {
    addSlope(site, house, side);
    addGable(site, house, side);
  }
  addWindows(site, house);
}

/** From the middle of the house: along it, across it, up. */
function within({ x, y, turn }: Neighbour, [along, across, up]: Vec): Vec {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [x + along * c - across * s, y + along * s + across * c, up];
}

function addSlope(site: Site, house: Neighbour, side: number): void {
  const [end, eaves] = [house.wide / 2 + EAVES_MM, house.deep / 2 + EAVES_MM];
  const ridge = house.high + (house.deep / 2) * RISE;
  const low = house.high - EAVES_MM * RISE;
  const slope = Math.hypot(eaves, ridge - low);
  const corners = (down: number): Vec[] => [
    within(house, [-end, side * eaves, low - down]),
    within(house, [end, side * eaves, low - down]),
    within(house, [end, 0, ridge - down]),
    within(house, [-end, 0, ridge - down]),
  ];
  const locals: Vec[] = [
    [0, 0, 0],
    [2 * end, 0, 0],
    [2 * end, slope, 0],
    [0, slope, 0],
  ];
  site.mesh.begin(some(site, 'tile'));
  site.mesh.flat(corners(0), locals, [0, 0, 1]);
  site.mesh.begin(some(site, 'oldWood'));
  site.mesh.flat(corners(140), locals, [0, 0, -1]);
  const [a, b] = [corners(0), corners(140)];
  site.mesh.flat([a[0]!, a[1]!, b[1]!, b[0]!], locals, [0, 0, 1]);
}

function addGable(site: Site, house: Neighbour, side: number): void {
  const [end, half] = [(side * house.wide) / 2, house.deep / 2];
  const corners: Vec[] = [
    within(house, [end, -half, house.high]),
    within(house, [end, half, house.high]),
    within(house, [end, 0, house.high + half * RISE]),
  ];
  site.mesh.begin({ material: 'houseWall', tone: 0.4 });
  site.mesh.flat(corners, corners, [side * Math.cos(house.turn), side * Math.sin(house.turn), 0]);
}

const WINDOW = { every: 2600, wide: 1700, high: 1200 };

function addWindows(site: Site, house: Neighbour): void {
  const { wide, deep, high, turn } = house;
  const storeys = high > 4000 ? [1000, 3600] : [1000];
  const count = Math.floor(wide / WINDOW.every);
  for (let i = 0; i < count; i += 1)
    for (const sill of storeys)
      for (const side of [-1, 1]) {
        const along = -wide / 2 + WINDOW.every * (i + 0.5);
        const at = (out: number, across = 0, up = 0) =>
          within(house, [along + across, side * (deep / 2 + out), sill + up]);
        put(site, block(at(10), [WINDOW.wide, 60, WINDOW.high], turn), 'glass');
        for (const across of [-0.5, 0, 0.5])
          put(site, block(at(25, across * WINDOW.wide), [60, 60, WINDOW.high], turn), 'steel');
        for (const up of [-30, WINDOW.high - 30])
          put(site, block(at(25, 0, up), [WINDOW.wide + 60, 60, 60], turn), 'steel');
      }
}
