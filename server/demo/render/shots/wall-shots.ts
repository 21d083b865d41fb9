import type { Shot } from './shot.ts';

/** Floor and lath. */
export const WALL_SHOTS: readonly Shot[] = [
  {
    ...{ name: 'bearers-and-sheet', day: 17, time: '09:25:31', clouds: 4, sheets: ['は通り足固め'] },
    view: { position: [600, 500, 1950], lookAt: [3300, 4600, 350], roll: -1.2, focal35: 24 },
  },
  {
    ...{ name: 'bearers-pegged', day: 18, time: '13:11:55', clouds: 'overcast' },
    view: { position: [2727, -1700, 1350], lookAt: [2950, 3400, 250], roll: 0.6, focal35: 28 },
  },
  {
    ...{ name: 'inside-joists', day: 22, time: '16:14:06', clouds: 5 },
    view: { position: [900, 450, 2000], lookAt: [2350, 6500, 800], roll: -1.2, focal35: 24 },
  },
  {
    ...{ name: 'west-lath-going-on', day: 24, done: 0.45, time: '14:40:38', clouds: 3 },
    view: { position: [-4300, 900, 1600], lookAt: [0, 2300, 1750], roll: 0.9, focal35: 26 },
  },
  {
    ...{ name: 'slip-wall-lath', day: 25, done: 0.8, time: '10:26:14', clouds: 2 },
    view: { position: [6750, -1250, 1150], lookAt: [5700, 4200, 1750], roll: -0.8, focal35: 26 },
  },
  {
    ...{ name: 'east-lath', day: 26, time: '09:07:49', clouds: 8 },
    view: { position: [10_300, 5200, 1550], lookAt: [7273, 3800, 1750], roll: 1, focal35: 26 },
  },
  {
    ...{ name: 'lake-wall-tilted', day: 27, time: '11:50:22', clouds: 7 },
    view: { position: [900, -3100, 1560], lookAt: [2700, 0, 1600], roll: 7.5, focal35: 26 },
  },
  {
    ...{ name: 'west-post-lath', day: 28, done: 0.5, time: '15:18:57', clouds: 6 },
    view: { position: [-1700, 2500, 1600], lookAt: [0, 3900, 1650], roll: -1, focal35: 28 },
  },
];
