import type { Shot } from './shot.ts';

/** The roof's frame before it closes, its boards, and what stands under them. */
export const ROOF_SHOTS: readonly Shot[] = [
  {
    ...{ name: 'lake-side-rafters', day: 6, time: '11:15:36', clouds: 2 },
    view: { position: [2900, 5900, 5100], lookAt: [3400, 1200, 5400], roll: 1.2, focal35: 24 },
  },
  {
    ...{ name: 'lake-side-eaves', day: 6, time: '13:32:08', clouds: 9 },
    view: { position: [800, -3100, 1600], lookAt: [3300, 1300, 4700], roll: -0.6, focal35: 28 },
  },
  {
    ...{ name: 'scaffold-west-rafters', day: 7, time: '08:31:27', clouds: 3 },
    view: { position: [1700, -2300, 6700], lookAt: [1750, 1500, 5150], roll: 1.4, focal35: 24 },
  },
  {
    ...{ name: 'scaffold-east-rafters', day: 7, time: '08:33:03', clouds: 3 },
    view: { position: [5600, -2250, 6700], lookAt: [5550, 1500, 5150], roll: -0.8, focal35: 24 },
  },
  {
    ...{ name: 'hill-side-west-end', day: 7, time: '09:48:21', clouds: 3 },
    view: { position: [1500, 8560, 5750], lookAt: [1250, 5200, 5350], roll: 0.9, focal35: 35 },
  },
  {
    ...{ name: 'loft-joists-thumb', day: 7, time: '16:21:59', clouds: 5 },
    view: { position: [450, 500, 4350], lookAt: [3900, 4200, 3050], roll: -1.1, focal35: 24 },
    faults: { thumb: 'bottom-right' },
  },
  {
    ...{ name: 'lake-side-boarding', day: 8, done: 0.55, time: '14:55:12', clouds: 6 },
    view: { position: [300, -12_600, 950], lookAt: [3700, 1800, 3300], roll: 1.3, focal35: 40 },
  },
  {
    ...{ name: 'under-the-boards', day: 8, done: 0.8, time: '16:02:47', clouds: 6 },
    view: { position: [850, 4700, 5350], lookAt: [4500, 1900, 5300], roll: 1.4, focal35: 24 },
  },
  {
    ...{ name: 'west-gable', day: 11, time: '15:36:20', clouds: 1 },
    view: { position: [-4700, 2600, 1620], lookAt: [0, 3900, 3650], roll: -0.7, focal35: 28 },
  },
  {
    ...{ name: 'dark-loft', day: 11, time: '15:58:03', clouds: 1 },
    view: { position: [450, 2850, 5450], lookAt: [6000, 3950, 5500], roll: 0.8, focal35: 26 },
    faults: { steps: -0.5, noise: 3 },
  },
];
