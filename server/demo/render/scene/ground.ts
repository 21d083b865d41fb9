import { cross } from '#domain/frame/clip';
import { addBlob, addSheet } from '../mesh/shapes.ts';
import { layered } from '../noise.ts';
import { addScaled, unit, type Vec } from '../vec.ts';
import { often, put, some, type Site } from './site.ts';
import { WATER_MM, fromShore, groundAt, type Slip } from './terrain.ts';

const FAR_MM = 430_000;
const NEAR_MM = 10_000;
const CENTRE = { x: 2600, y: 2200 };

/** Land, lake, and what lies about on a site. */
export function addGround(site: Site, slip: Slip): void {
  const height = (x: number, y: number) => groundAt(x, y, slip);
  const steps = Math.round(360 * Math.max(0.3, Math.sqrt(site.detail)));
  const at = (u: number, v: number): Vec => {
    const [x, y] = [CENTRE.x + stretch(2 * u - 1), CENTRE.y + stretch(2 * v - 1)];
    return [x, y, height(x, y)];
  };
  const sheet = { columns: steps, rows: steps, at, towards: [0, 0, 1] as Vec };
  addSheet(site.mesh, sheet, { material: 'ground', tone: 0.5 });
  addLake(site);
  addPebbles(site, height);
  addChips(site, height);
  addGrass(site, height);
}

/** Close together near the house, far apart far from it. */
const stretch = (t: number) => Math.sign(t) * (Math.abs(t) * NEAR_MM + Math.abs(t) ** 6 * FAR_MM);

function addLake(site: Site): void {
  const corners: Vec[] = [
    [-2e6, -2e6, WATER_MM],
    [2e6, -2e6, WATER_MM],
    [2e6, 2e6, WATER_MM],
    [-2e6, 2e6, WATER_MM],
  ];
  site.mesh.begin({ material: 'water', tone: 0.5 });
  site.mesh.flat(corners, corners, [0, 0, 1]);
}

type Height = (x: number, y: number) => number;

function addPebbles(site: Site, height: Height): void {
  const { random } = site;
  often(site, 6500, () => {
    const [turn, far] = [random.between(0, 2 * Math.PI), random.next() ** 0.7 * 12_000];
    const [x, y] = [CENTRE.x + Math.cos(turn) * far, CENTRE.y + Math.sin(turn) * far];
    const shore = Math.abs(fromShore(x, y)) < 1100;
    if (!shore && layered(x * 0.0006, y * 0.0006, 11, 3) < 0.43) return;
    const size = random.between(6, 22) * (random.chance(0.06) ? 2.8 : 1) * (shore ? 1.9 : 1);
    addBlob(
      site.mesh,
      {
        middle: [x, y, height(x, y) + size * 0.2],
        radii: [size * random.between(0.8, 1.3), size * random.between(0.8, 1.3), size * 0.7],
        segments: 4,
        reach: ([a, b, c]) => 0.75 + 0.5 * layered(a * 1.5 + x, b * 1.5 + y, c * 1.5, 2),
      },
      some(site, 'stone'),
    );
  });
}

/** What chisel and plane left. */
function addChips(site: Site, height: Height): void {
  const { random } = site;
  often(site, 2200, () => {
    const [x, y] = [random.between(-3500, 6500), random.between(-3200, 8200)];
    if (fromShore(x, y) < 500) return;
    const turn = random.between(0, 2 * Math.PI);
    const along = unit([Math.cos(turn), Math.sin(turn), random.about(0.2)]);
    const across = unit(cross([random.about(0.3), random.about(0.3), 1], along));
    put(
      site,
      {
        middle: [x, y, height(x, y) + 6],
        axes: [along, across, cross(along, across)],
        half: [random.between(8, 55), random.between(3, 12), 1.2],
      },
      'wood',
    );
  });
}

function addGrass(site: Site, height: Height): void {
  const { random } = site;
  often(site, 26_000, () => {
    const [x, y] = [random.between(-17_000, 22_000), random.between(-15_000, 24_000)];
    const away = Math.hypot(x - 3600, y - 3000);
    if (away < 5600 || fromShore(x, y) < 300) return;
    if (layered(x * 0.00035 + 5, y * 0.00035, 21, 3) < 0.47 + 0.12 * Math.max(0, 1 - (away - 5600) / 5000))
      return;
    addBlade(site, [x, y, height(x, y)]);
  });
}

/** Two bends, thin at its tip. */
function addBlade(site: Site, [x, y, z]: Vec): void {
  const { random, mesh } = site;
  const [high, turn] = [random.between(40, 170), random.between(0, 2 * Math.PI)];
  const lean = random.between(0.2, 0.9) * high;
  const forth: Vec = [Math.cos(turn), Math.sin(turn), 0];
  const across: Vec = [-forth[1], forth[0], 0];
  const normal = unit([-forth[0] * 0.3, -forth[1] * 0.3, 1]);
  mesh.begin(some(site, 'grass'));
  const point = (far: number, up: number, side: number) => {
    const at = addScaled(addScaled([x, y, z + up], forth, far), across, side);
    return mesh.vertex(at, normal, [0, 0, (1000 * up) / high]);
  };
  const [a, b] = [point(0, -10, -4), point(0, -10, 4)];
  const [c, d] = [point(lean * 0.4, high * 0.6, 3), point(lean * 0.4, high * 0.6, -3)];
  const tip = point(lean, high * 0.95, 0);
  mesh.quad(a, b, c, d);
  mesh.triangle(d, c, tip);
}
