import { addBox, addSheet, addTube, type Tube } from '../mesh/shapes.ts';
import { layered } from '../noise.ts';
import { UP, type Vec } from '../vec.ts';
import type { HouseState, Infill } from './house-state.ts';
import { some, type Site } from './site.ts';
import { panelOf, type Panel } from './wall-panel.ts';

/** What fills the walls, bay by bay. */
export function addWalls(site: Site, { walls, reader }: HouseState): void {
  for (const wall of walls) addInfill(site, wall, panelOf(wall.zone, reader));
}

function addInfill(site: Site, { infill, laid = 1 }: Infill, panel: Panel): void {
  const { random } = site;
  switch (infill) {
    case 'lath':
      return addLath(site, panel, { coat: () => panel.bottom, laid });
    case 'rough':
      return addCoat(site, panel, () => panel.top);
    case 'half': {
      const [own, middle] = [random.next() * 9, panel.bottom + (panel.top - panel.bottom) * 0.52];
      const edge = (along: number) =>
        middle + 160 * Math.sin(along * 0.0022 + own) + 240 * (layered(along * 0.004, own, 2, 4) - 0.47);
      addLath(site, panel, { coat: edge, laid: 1 });
      return addCoat(site, panel, edge);
    }
    case 'boarded':
      return addBoarding(site, panel);
  }
}

const LATH_EVERY_MM = 52;
/** Out of the wall's middle, in which the rails are 15 mm thick: upright lath on them, level lath on that, ties. */
const UPRIGHT_OUT_MM = 14;
const LEVEL_OUT_MM = 22;
const TIE_OUT_MM = 27;

interface Tied {
  /** Up to where a coat hides what is tied. */
  readonly coat: (along: number) => number;
  readonly laid: number;
}

/** Split bamboo upright and, as far up as it is laid, level; tied with straw. */
function addLath(site: Site, panel: Panel, { coat, laid }: Tied): void {
  const { random } = site;
  const columns = Math.floor(panel.wide / LATH_EVERY_MM);
  const rows = Math.floor((panel.top - panel.bottom) / LATH_EVERY_MM);
  for (let i = 1; i < columns; i += 1) {
    const along = (i * panel.wide) / columns + random.about(6);
    const [low, high] = [panel.bottom + random.between(0, 20), panel.top - random.between(0, 20)];
    const bent = bends(site, (share, bend) =>
      panel.at(along + bend, low + (high - low) * share, UPRIGHT_OUT_MM),
    );
    addSplit(site, bent, { flat: 'along', panel });
  }
  for (let j = 1; j < rows * laid; j += 1) {
    const z = panel.bottom + (j * (panel.top - panel.bottom)) / rows + random.about(6);
    const bent = bends(site, (share, bend) =>
      panel.at(5 + (panel.wide - 10) * share, z + bend, LEVEL_OUT_MM),
    );
    addSplit(site, bent, { flat: 'upward', panel });
    for (let i = 1; i < columns; i += 1) {
      const along = (i * panel.wide) / columns;
      if (z > coat(along) + 60 && random.chance(0.62)) addTie(site, panel, along, z);
    }
  }
}

const BENDS = 7;

/** Points of a stick that is not quite straight. */
function bends({ random }: Site, at: (share: number, bend: number) => Vec): Vec[] {
  const [one, other] = [random.next() * 9, random.next() * 9];
  return Array.from({ length: BENDS + 1 }, (_, i) => {
    const share = i / BENDS;
    return at(share, 4 * Math.sin(share * 5 + one) + 1.6 * Math.sin(share * 11 + other));
  });
}

function addSplit(
  site: Site,
  through: Vec[],
  { flat, panel }: { flat: 'along' | 'upward'; panel: Panel },
): void {
  const { random } = site;
  const [wide, thick] = [random.between(7, 11), 4.5];
  const upward = flat === 'along' ? panel.side : UP;
  // The first radius is square to `upward`: along the wall for an upright stick, out of it for a level one.
  const radii: Tube['radii'] = flat === 'along' ? [wide, thick] : [thick, wide];
  addTube(site.mesh, { through, radii, upward, sides: 6 }, some(site, 'bamboo'));
}

function addTie(site: Site, panel: Panel, along: number, z: number): void {
  const { random } = site;
  const lean = random.chance(0.5) ? 13 : -13;
  const over = [
    panel.at(along - 13, z - lean, TIE_OUT_MM),
    panel.at(along, z, TIE_OUT_MM + 4),
    panel.at(along + 13, z + lean, TIE_OUT_MM),
  ];
  addTube(
    site.mesh,
    { through: over, radii: [3, 3], upward: [0.3, 0.2, 1], sides: 5, closed: false },
    some(site, 'rope'),
  );
  if (!random.chance(0.25 * site.detail)) return;
  const end = [
    panel.at(along, z, TIE_OUT_MM + 4),
    panel.at(along + random.about(10), z - 20, TIE_OUT_MM + 12),
    panel.at(along + random.about(20), z - random.between(30, 60), TIE_OUT_MM + 8),
  ];
  addTube(
    site.mesh,
    { through: end, radii: [1.8, 1.8], upward: [0.3, 0.2, 1], sides: 4, closed: false },
    some(site, 'rope'),
  );
}

/** Half of the coat: what is thrown on from one side, beyond all lath and ties. */
const COAT_MM = 40;
const COAT_STEP_MM = 15;

function addCoat(site: Site, panel: Panel, edge: (along: number) => number): void {
  const own = site.random.next() * 9;
  const tone = site.random.next();
  const step = COAT_STEP_MM / Math.max(0.25, site.detail);
  const high = panel.top - panel.bottom;
  for (const side of [-1, 1]) {
    const at = (u: number, v: number): Vec => {
      const [along, z] = [u * panel.wide, Math.min(panel.bottom + v * high, edge(u * panel.wide))];
      const toEdge = Math.max(0, 1 - (edge(along) - z) / 30);
      const thick = COAT_MM + coatRelief(along, z, side, own);
      return panel.at(along, z, side * thick * Math.sqrt(Math.max(0, 1 - 0.9 * toEdge * toEdge)));
    };
    const open = (u: number, v: number) => panel.bottom + v * high > edge(u * panel.wide) + step;
    const local = (_: Vec, u: number, v: number): Vec => [u * panel.wide + own * 900, v * high, side * 100];
    const towards: Vec = [panel.side[0] * side, panel.side[1] * side, 0];
    const [columns, rows] = [Math.ceil(panel.wide / step), Math.ceil(high / step)];
    addSheet(site.mesh, { columns, rows, at, open, local, towards }, { material: 'plaster', tone });
  }
}

/** Waves of the hand, strokes of the trowel, pits. */
function coatRelief(along: number, z: number, side: number, own: number): number {
  const waves = 18 * (layered(along * 0.005 + own, z * 0.005, side * 3, 4) - 0.47);
  const strokes = 9 * (layered(along * 0.011, z * 0.03, side * 9 + own, 3) - 0.43);
  const pits = 4 * (layered(along * 0.06, z * 0.06, own, 2) - 0.37);
  return Math.max(-9, waves + strokes + pits);
}

const BOARD_MM = 180;

/** Upright boards outside, with their joints. */
function addBoarding(site: Site, panel: Panel): void {
  const { random } = site;
  const count = Math.ceil(panel.wide / BOARD_MM);
  const wide = panel.wide / count;
  for (let i = 0; i < count; i += 1) {
    const middle = panel.at((i + 0.5) * wide, (panel.bottom + panel.top) / 2, -68 + random.about(1.5));
    const box = {
      middle,
      axes: [UP, panel.along, panel.side] as const,
      half: [(panel.top - panel.bottom) / 2, wide / 2 - 1.5, 7.5] as const,
    };
    addBox(site.mesh, box, some(site, 'board'));
  }
}
