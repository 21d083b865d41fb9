import { boathouse } from '#domain/frame/invented/boathouse/boathouse';
import type { InventedMember } from '#domain/frame/invented/invented-house';
import type { Stage } from '#domain/frame/stage';
import { stateOf, type Boards, type HouseState, type Infill } from '../scene/house-state.ts';

/** Any day: the house is the same. */
const house = boathouse('2026-04-01');

const ROOF = ['小屋束', '棟束', '母屋', '棟木', '小屋貫', '垂木', '広小舞'];
const LATER = ['根太', '間柱', '筋かい', '火打', '方杖'];

function raisedWithout(kinds: readonly string[], stage: Stage) {
  return ({ kind }: InventedMember): Stage | null => (kinds.includes(kind) ? null : stage);
}

/** A bay of the ground floor's west wall. */
function westBay(from: string, to: string, infill: Infill['infill']): Infill {
  const whole = house.coverings.find(({ name }) => name === '西の壁 荒壁')?.zone;
  if (whole?.shape !== 'wall') throw new RangeError('The boathouse has no west wall.');
  return { zone: { ...whole, from, to }, infill };
}

function boardsOf(name: string, how: Omit<Boards, 'zone'>): Boards {
  const zone = house.coverings.find((covering) => covering.name === name)?.zone;
  if (!zone || zone.shape === 'wall') throw new RangeError(`The boathouse has no ${name}.`);
  return { zone, ...how };
}

/** Between the zone's surface, which is reckoned plumb over the rafters, and their upper side. */
const ROOF_LIFT_MM = -41;
const ROOF_BOARD_MM = 15;

const roof = (name: string, laid: number) =>
  boardsOf(`${name}の屋根 野地板`, { lift: ROOF_LIFT_MM, thick: ROOF_BOARD_MM, along: 'x', laid });

/** Moments of the work, each the same whenever it is asked for. */
export const STATES = {
  raising: () =>
    stateOf(house, { stageOf: raisedWithout([...ROOF, ...LATER], 'raised'), sheets: ['は通り足固め'] }),
  joists: () => stateOf(house, { stageOf: raisedWithout(['広小舞'], 'pegged') }),
  lath: () =>
    stateOf(house, {
      stageOf: raisedWithout([], 'pegged'),
      walls: [
        westBay('一', '二', 'lath'),
        westBay('二', '三', 'rough'),
        westBay('三', '四', 'half'),
        westBay('四', '五', 'lath'),
      ],
      boards: [roof('湖側', 1), roof('山側', 1)],
    }),
  roof: () =>
    stateOf(house, {
      stageOf: raisedWithout(['広小舞'], 'pegged'),
      boards: [roof('湖側', 0.45), boardsOf('二階 床板', { lift: -30, thick: 30, along: 'y', laid: 1 })],
    }),
} as const satisfies Record<string, () => HouseState>;

export type StateName = keyof typeof STATES;
