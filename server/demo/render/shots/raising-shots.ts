import type { Shot } from './shot.ts';

/** From the stones to the last peg. */
export const RAISING_SHOTS: readonly Shot[] = [
  {
    ...{ name: 'stones-set', day: -6, time: '09:12:40', clouds: 6 },
    view: { position: [-1700, 10_400, 1650], lookAt: [3900, 2600, 0], roll: -0.8, focal35: 26 },
  },
  {
    ...{ name: 'first-frames', day: 0, done: 0.5, time: '10:04:17', clouds: 2 },
    view: { position: [-3600, -4300, 1540], lookAt: [2300, 2400, 1750], roll: 1.1, focal35: 26 },
  },
  {
    ...{ name: 'lake-side-raising', day: 0, time: '15:47:52', clouds: 3 },
    view: { position: [-1900, -4900, 1560], lookAt: [3700, 2300, 2300], roll: 0.7, focal35: 24 },
  },
  {
    ...{ name: 'upper-storey', day: 1, time: '11:21:05', clouds: 5 },
    view: { position: [300, 8520, 5650], lookAt: [3900, 2700, 4200], roll: -1.6, focal35: 28 },
  },
  {
    ...{ name: 'ridge-up', day: 1, time: '16:52:33', clouds: 8 },
    view: { position: [16_500, 400, 900], lookAt: [3900, 3000, 3500], roll: 1.4, focal35: 35 },
    faults: { steps: -0.4 },
  },
  {
    ...{ name: 'rafters-going-on', day: 2, time: '14:09:28', clouds: 4 },
    view: { position: [-3500, -2500, 1620], lookAt: [2600, 2300, 4700], roll: -0.9, focal35: 28 },
  },
  {
    ...{ name: 'corner-pegged', day: 4, time: '10:33:10', clouds: 1 },
    view: { position: [1650, 1500, 1650], lookAt: [120, 60, 2480], roll: 2.1, focal35: 26 },
  },
  {
    ...{ name: 'knee-brace-blurred', day: 4, time: '17:06:44', clouds: 7 },
    view: { position: [4300, -2100, 1500], lookAt: [6300, 300, 2350], roll: -1.4, focal35: 26 },
    faults: { moved: [0.016, 0.005] },
  },
];
