import type { View } from '../camera.ts';
import type { Faults } from '../develop/develop.ts';
import type { SkyKind } from '../light/sky.ts';
import { unit, type Vec } from '../vec.ts';
import type { StateName } from './states.ts';

/** A photo that somebody might have taken. */
export interface Shot {
  readonly name: string;
  readonly state: StateName;
  readonly view: View;
  readonly sky: SkyKind;
  /** Of the noise in it; that of the site is its own. */
  readonly seed: number;
  readonly faults?: Faults;
}

/** From where the sun stands: degrees from the south (-y) towards the west (-x), and above the horizon. */
function sunAt(westward: number, high: number): Vec {
  const [turn, up] = [(westward * Math.PI) / 180, (high * Math.PI) / 180];
  return unit([-Math.sin(turn) * Math.cos(up), -Math.cos(turn) * Math.cos(up), Math.sin(up)]);
}

const LATE: SkyKind = { kind: 'day', sun: sunAt(75, 30), clouds: 5 };
const AFTERNOON: SkyKind = { kind: 'day', sun: sunAt(62, 38), clouds: 3 };

export const SHOTS: readonly Shot[] = [
  {
    name: 'lake-side-raising',
    state: 'raising',
    view: { position: [-1900, -4900, 1560], lookAt: [3700, 2300, 2500], roll: 0.7, focal35: 24 },
    sky: AFTERNOON,
    seed: 1,
  },
  {
    name: 'inside-joists',
    state: 'joists',
    view: { position: [900, 450, 2000], lookAt: [2350, 6500, 800], roll: -1.2, focal35: 24 },
    sky: LATE,
    seed: 2,
  },
  {
    name: 'west-wall-lath',
    state: 'lath',
    view: { position: [-4300, 900, 1600], lookAt: [0, 2300, 1750], roll: 0.9, focal35: 26 },
    sky: AFTERNOON,
    seed: 3,
  },
  {
    name: 'under-the-roof',
    state: 'roof',
    view: { position: [700, 5100, 3720], lookAt: [5000, 3000, 5650], roll: 1.4, focal35: 24 },
    sky: AFTERNOON,
    seed: 4,
  },
];
