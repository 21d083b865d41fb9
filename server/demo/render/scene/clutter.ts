import { addBlob, addSheet, addTube, block, stick } from '../mesh/shapes.ts';
import { layered } from '../noise.ts';
import type { Vec } from '../vec.ts';
import { addBatterBoards } from './batter-boards.ts';
import type { HouseState } from './house-state.ts';
import { put, putStick, some, type Site } from './site.ts';

type Height = (x: number, y: number) => number;

/** What stands about on a site, where the carpenters do not fall over it. */
export function addClutter(site: Site, state: HouseState, height: Height): void {
  timberStack(site, [-5200, -700], height);
  sawhorses(site, [-6600, -3300], height);
  earthHeap(site, [-2700, 5300], height);
  trough(site, [-2600, 4000], height);
  tarpHeap(site, [-5600, 6300], height);
  for (const [x, y] of [
    [-1300, -1100],
    [-1700, -1350],
    [-1500, 3400],
  ] as const)
    bucket(site, [x, y, height(x, y)]);
  sacks(site, [-1500, 6900], height);
  if (state.members.length === 0) return addBatterBoards(site, state);
  if (state.members.some(({ kind }) => kind === 'keta'))
    ladder(site, [-1400, 6200, height(-1400, 6200)], [-140, 6200, 4600]);
  scaffold(site, height);
}

function timberStack(site: Site, [x, y]: readonly [number, number], height: Height): void {
  const { random } = site;
  const z = height(x, y);
  const lay = (at: number, layer: number, count: number) => {
    for (let i = 0; i < count; i += 1) {
      const across = x + i * 140 + random.about(8);
      const ends: [Vec, Vec] = [
        [across, y - random.between(-100, 150), at],
        [across + random.about(12), y + 2900 + random.about(220), at],
      ];
      putStick(site, ends, [115, 115], random.chance(0.75) ? 'wood' : 'oldWood');
    }
    if (layer < 2)
      for (const along of [500, 2200])
        putStick(
          site,
          [
            [x - 80, y + along, at + 70],
            [x + 1150, y + along, at + 70],
          ],
          [40, 24],
          'oldWood',
        );
  };
  for (const along of [400, 2300])
    putStick(
      site,
      [
        [x - 100, y + along, z + 60],
        [x + 1200, y + along, z + 60],
      ],
      [90, 120],
      'oldWood',
    );
  for (let layer = 0; layer < 3; layer += 1) lay(z + 180 + layer * 141, layer, layer < 2 ? 8 : 5);
}

function sawhorses(site: Site, [x, y]: readonly [number, number], height: Height): void {
  for (const far of [0, 2100]) horse(site, x + far, y, height);
  putStick(
    site,
    [
      [x - 600, y - 20, 745],
      [x + 2950, y + 90, 745],
    ],
    [120, 120],
    'wood',
  );
  putStick(
    site,
    [
      [x - 300, y + 270, 720],
      [x + 2700, y + 240, 720],
    ],
    [105, 45],
    'wood',
  );
}

function horse(site: Site, x: number, y: number, height: Height): void {
  for (const side of [-1, 1])
    for (const end of [-350, 350])
      putStick(
        site,
        [
          [x + side * 220, y + end, height(x, y)],
          [x + side * 30, y + end * 0.8, 600],
        ],
        [90, 35],
        'oldWood',
      );
  putStick(
    site,
    [
      [x, y - 450, 640],
      [x, y + 450, 640],
    ],
    [90, 90],
    'oldWood',
  );
}

/** Earth for the walls, wet and worked. */
function earthHeap(site: Site, [x, y]: readonly [number, number], height: Height): void {
  addBlob(
    site.mesh,
    {
      middle: [x, y, height(x, y) - 60],
      radii: [800, 650, 520],
      segments: Math.max(10, Math.round(44 * site.detail)),
      reach: ([a, b, c]) => 0.72 + 0.55 * layered(a * 2.6 + 3, b * 2.6, c * 2.6, 4),
    },
    { material: 'plaster', tone: 0.37 },
  );
}

function trough(site: Site, [x, y]: readonly [number, number], height: Height): void {
  const z = height(x, y) + 130;
  const [left, right, near, far] = [x - 550, x + 550, y - 300, y + 300];
  for (const along of [near, far])
    putStick(
      site,
      [
        [left, along, z],
        [right, along, z],
      ],
      [30, 240],
      'board',
    );
  for (const across of [left, right])
    putStick(
      site,
      [
        [across, near, z],
        [across, far, z],
      ],
      [30, 240],
      'board',
    );
  addBlob(
    site.mesh,
    {
      middle: [x, y, z - 70],
      radii: [520, 275, 110],
      segments: Math.max(8, Math.round(26 * site.detail)),
      reach: ([a, b]) => 0.8 + 0.4 * layered(a * 3 + 7, b * 3, 1, 4),
    },
    { material: 'plaster', tone: 0.71 },
  );
}

/** A crumpled sheet over something. */
function tarpHeap(site: Site, [x, y]: readonly [number, number], height: Height): void {
  const at = (u: number, v: number): Vec => {
    const [px, py] = [x + u * 2400, y + v * 2200];
    const swell = Math.max(0, 1 - ((u - 0.5) ** 2 + (v - 0.5) ** 2) * 4.6);
    const folds =
      100 * (layered(u * 6, v * 6, 4, 4) - 0.45) +
      70 * Math.abs(layered(u * 13 + v * 6, v * 11 - u * 4, 9, 2) - 0.38);
    return [px, py, height(px, py) + 25 + 600 * swell ** 0.8 + folds * (swell > 0 ? 1 : 0.5)];
  };
  const steps = Math.max(16, Math.round(90 * site.detail));
  addSheet(site.mesh, { columns: steps, rows: steps, at, towards: [0, 0, 1] }, some(site, 'tarp'));
}

function bucket(site: Site, [x, y, z]: Vec): void {
  const thing = some(site, 'bucket');
  const tube = (from: number, to: number, radius: number) =>
    addTube(
      site.mesh,
      {
        through: [
          [x, y, z + from],
          [x, y, z + to],
        ],
        radii: [radius, radius],
        upward: [1, 0, 0],
        sides: 24,
        closed: from === 0,
      },
      thing,
    );
  tube(0, 15, 135);
  tube(5, 310, 150);
  tube(295, 325, 160);
}

function sacks(site: Site, [x, y]: readonly [number, number], height: Height): void {
  const { random } = site;
  for (let i = 0; i < 3; i += 1) {
    const own = random.next() * 50;
    addBlob(
      site.mesh,
      {
        middle: [x + random.about(50), y + i * 20, height(x, y) + 90 + i * 150],
        radii: [360, 240, 100],
        segments: Math.max(8, Math.round(22 * site.detail)),
        reach: ([a, b, c]) => 0.83 + 0.35 * layered(a * 1.8 + own, b * 1.8, c * 1.8, 3),
      },
      some(site, 'sack'),
    );
  }
}

function ladder(site: Site, foot: Vec, head: Vec): void {
  const rail = (side: number, share: number): Vec => [
    foot[0] + (head[0] - foot[0]) * share,
    foot[1] + side * 200,
    foot[2] + (head[2] - foot[2]) * share,
  ];
  for (const side of [-1, 1])
    addTube(
      site.mesh,
      { through: [rail(side, 0), rail(side, 1.06)], radii: [18, 28], sides: 10 },
      some(site, 'steel'),
    );
  for (let i = 1; i < 13; i += 1)
    addTube(
      site.mesh,
      { through: [rail(-1, i / 13), rail(1, i / 13)], radii: [14, 14] },
      some(site, 'steel'),
    );
}

const POLE_MM = 24;

/** Poles and planks along the hill side and before the east gable. */
function scaffold(site: Site, height: Height): void {
  const { random } = site;
  const pole = (x: number, y: number) => tube(site, [x, y, height(x, y)], [x, y, 5600 + random.about(250)]);
  for (const x of [-800, 1200, 3200, 5200, 7200]) for (const y of [8150, 8850]) pole(x, y);
  for (const z of [1900, 3700]) {
    for (const y of [8200, 8900]) tube(site, [-1300, y, z], [7700, y, z]);
    for (const x of [-1200, 1750, 4700])
      put(site, stick([x, 8500, z + 60], [x + 2900, 8500, z + 60], [480, 35]), 'board');
  }
  put(site, block([-3900, 2600, height(-3900, 2600)], [700, 450, 320], 0.4), 'board');
}

function tube(site: Site, from: Vec, to: Vec): void {
  addTube(site.mesh, { through: [from, to], radii: [POLE_MM, POLE_MM], sides: 12 }, some(site, 'steel'));
}
