import { layered, ramp } from '../noise.ts';

/** Of the lake, below the datum, which is the ground under the house. */
export const WATER_MM = -420;
const LAKE_BED_MM = -1500;
/** Middle of the yard, about which the ground is trodden level. */
const YARD = { x: 3600, y: 2800 };

/** The slip: a ditch from the lake into the house's last bay, between two lines along it. */
export interface Slip {
  readonly left: number;
  readonly right: number;
  readonly end: number;
}

/** How far from the shore, mm; negative in the lake, which lies to the south and the east. */
export function fromShore(x: number, y: number): number {
  const bay = 1100 * (layered(x / 4000, y / 4000, 31, 3) - 0.45);
  const south = (y + 4300 - 0.3 * x) / Math.hypot(1, 0.3);
  const east = (10_300 - x + 0.35 * Math.max(0, y - 4000)) / Math.hypot(1, 0.35);
  return Math.min(south, east) + bay;
}

/** Height of the ground. */
export function groundAt(x: number, y: number, slip: Slip): number {
  const away = Math.hypot(x - YARD.x, y - YARD.y);
  const wild = Math.min(1, Math.max(0.3, (away - 5000) / 6000));
  const swell = 200 * wild * (layered(x * 0.00035, y * 0.00035, 3, 4) - 0.47);
  const bumps = 44 * (layered(x * 0.0019, y * 0.0019, 7, 4) - 0.47);
  const land = swell + bumps;
  const under = Math.max(1 - ramp(fromShore(x, y), -2600, 500), ditch(x, y, slip));
  const steep = under * under * (3 - 2 * under);
  return land + (LAKE_BED_MM - land) * steep;
}

const BANK_MM = 260;

function ditch(x: number, y: number, { left, right, end }: Slip): number {
  const within = Math.min(x - left, right - x, end - y);
  return 0.75 * ramp(within, 0, BANK_MM);
}
