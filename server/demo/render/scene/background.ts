import { cross } from '#domain/frame/clip';
import { addLeaf, addSheet, addTube } from '../mesh/shapes.ts';
import { layered } from '../noise.ts';
import type { Random } from '../random.ts';
import { add, addScaled, mixVec, scale, unit, type Vec } from '../vec.ts';
import { addNeighbour } from './neighbour.ts';
import { often, some, type Site } from './site.ts';

/** What stands behind the house: nobody photographs a site against an empty horizon. */
export function addBackground(site: Site): void {
  for (const [x, y, wide, deep, high, turn] of [
    [1500, 27_000, 9500, 7000, 5600, 0.06],
    [-13_000, 25_000, 8000, 6500, 3300, -0.12],
    [15_500, 30_000, 9000, 7000, 5300, 0.3],
    [-27_000, 9000, 9000, 7000, 5400, 1.5],
    [-25_000, -4500, 7500, 6000, 3200, 1.62],
  ] as const)
    addNeighbour(site, { x, y, wide, deep, high, turn });
  for (const [x, y, high, wide] of [
    [-6500, 16_500, 6200, 2300],
    [-1200, 18_000, 5200, 2000],
    [6500, 16_800, 5600, 2100],
    [11_500, 17_500, 7200, 2700],
    [-13_500, 8500, 6500, 2600],
    [-15_500, 2500, 5600, 2200],
    [18_000, 14_500, 6400, 2500],
    [-14_500, -5500, 5200, 2100],
  ] as const)
    addTree(site, [x, y, -50], high, wide);
  addHedge(site);
  addHills(site);
  addPowerLine(site);
}

const any = (random: Random): Vec => [random.about(1), random.about(1), random.about(1)];

function addTree(site: Site, foot: Vec, high: number, wide: number): void {
  const { random } = site;
  const [one, other] = [random.next() * 9, random.next() * 5];
  const trunk = Array.from({ length: 7 }, (_, i): Vec =>
    add(foot, [Math.sin(i * 0.9 + one) * 70 * i, Math.cos(i * 0.7 + other) * 70 * i, (high * 0.75 * i) / 6]),
  );
  for (let i = 0; i < 6; i += 1) {
    const radius = 160 * (1 - i / 7);
    const through = [trunk[i]!, trunk[i + 1]!];
    addTube(site.mesh, { through, radii: [radius, radius], closed: false }, some(site, 'bark'));
  }
  const clumps = Array.from({ length: 26 }, () => clumpOf(site, trunk, [foot, high, wide]));
  often(site, 5200, () => {
    const clump = clumps[Math.floor(random.next() * clumps.length)]!;
    const out = unit(any(random));
    const at = addScaled(clump.middle, out, clump.radius * random.next() ** 0.33);
    addFoliage(site, at, unit(add(out, scale(any(random), 0.8))), random.between(80, 150));
  });
}

interface Clump {
  readonly middle: Vec;
  readonly radius: number;
}

function clumpOf(
  site: Site,
  trunk: readonly Vec[],
  [foot, high, wide]: readonly [Vec, number, number],
): Clump {
  const { random } = site;
  const share = random.between(0.32, 1);
  const turn = random.between(0, 2 * Math.PI);
  const out = wide * (1 - (Math.abs(share - 0.55) * 1.7) ** 2 * 0.8) * random.between(0.25, 1);
  const middle = add(foot, [Math.cos(turn) * out, Math.sin(turn) * out, high * share]);
  const from = trunk[Math.min(6, Math.floor(share * 6))]!;
  const through = [from, add(mixVec(from, middle, 0.5), [0, 0, 100]), middle];
  addTube(site.mesh, { through, radii: [30, 30], sides: 5, closed: false }, some(site, 'bark'));
  return { middle, radius: random.between(0.45, 0.95) * wide * 0.42 };
}

function addFoliage(site: Site, at: Vec, normal: Vec, long: number): void {
  const along = unit(cross(normal, any(site.random)));
  const across = cross(normal, along);
  const corners = [
    addScaled(at, along, -long),
    addScaled(at, across, long * 0.45),
    addScaled(at, along, long),
    addScaled(at, across, -long * 0.45),
  ];
  addLeaf(site.mesh, corners, some(site, 'leaf'));
}

function addHedge(site: Site): void {
  const { random } = site;
  often(site, 15_000, () => {
    const x = random.between(-11_000, 15_000);
    const top = 1900 + 200 * Math.sin(x / 900);
    const at: Vec = [x, 14_800 + random.about(420), random.between(100, top)];
    addFoliage(site, at, unit(add(any(random), [0, -0.5, 0.3])), random.between(60, 105));
  });
}

/** All around, on both shores of the lake. */
function addHills(site: Site): void {
  const at = (u: number, v: number): Vec => {
    const turn = u * 2 * Math.PI;
    const far = 620_000 + v * 320_000;
    const ridge = 15_000 + 165_000 * layered(Math.cos(turn) * 2.2 + 7, Math.sin(turn) * 2.2, 2, 5) ** 1.7;
    const rough = 9000 * (layered(turn * 22, v * 3, 3, 4) - 0.45);
    const up = v === 0 ? -6000 : ridge * Math.sin(Math.min(1, v / 0.75) * (Math.PI / 2)) + rough;
    return [Math.cos(turn) * far, Math.sin(turn) * far, up];
  };
  const thing = { material: 'hill', tone: 0.5 } as const;
  addSheet(site.mesh, { columns: 320, rows: 10, at, wraps: true, towards: [0, 0, 1] }, thing);
}

function addPowerLine(site: Site): void {
  for (const x of [-21_000, 14_000])
    addTube(
      site.mesh,
      {
        through: [
          [x, 16_000, -100],
          [x, 16_000, 9600],
        ],
        radii: [150, 130],
        sides: 14,
      },
      { material: 'stone', tone: 0.8 },
    );
  for (const z of [8700, 9300]) {
    const through = Array.from({ length: 29 }, (_, i): Vec => {
      const x = -56_000 + i * 3500;
      return [x, 16_000, z - 1000 * Math.sin((((x + 56_000) % 35_000) / 35_000) * Math.PI)];
    });
    addTube(site.mesh, { through, radii: [12, 12], sides: 5, closed: false }, { material: 'glass', tone: 0 });
  }
}
