import type { DeviceName } from './devices.ts';

/** What is wrong with a photo on purpose; the wrong clock is its device's. */
export type Trap =
  | { readonly kind: 'no-position' }
  | { readonly kind: 'off-site'; readonly east: number; readonly north: number }
  | { readonly kind: 'no-time' }
  /** Shows a clock beside the house: its true time may be said of it, and puts its device right. */
  | { readonly kind: 'clock-mark' }
  /** Sent on by telephone: smaller, and without a position. */
  | { readonly kind: 'reduced-copy' };

export interface PhotoRow {
  /** The file in the folder of finished pictures is named so, and its truth. */
  readonly name: string;
  /** The shot that it shows; the same as its name but for a copy. */
  readonly shot: string;
  readonly device: DeviceName;
  /** The running number that its device gave it. */
  readonly count: number;
  readonly trap?: Trap;
}

const rows = (device: DeviceName, own: readonly (readonly [shot: string, count: number, trap?: Trap])[]) =>
  own.map(([shot, count, trap]): PhotoRow => ({ name: shot, shot, device, count, ...(trap && { trap }) }));

export const PHOTO_ROWS: readonly PhotoRow[] = [
  ...rows('foreman', [
    ['stones-set', 2207],
    ['lake-side-raising', 2251],
    ['ridge-up', 2268],
    ['corner-pegged', 2290],
    ['lake-side-rafters', 2317],
    ['scaffold-west-rafters', 2324],
    ['scaffold-east-rafters', 2325],
    ['loft-joists-thumb', 2333],
    ['dark-loft', 2371],
    ['bearers-and-sheet', 2402],
    ['inside-joists', 2431],
    ['lake-wall-tilted', 2476],
  ]),
  ...rows('carpenter', [
    ['first-frames', 613],
    ['rafters-going-on', 640, { kind: 'no-time' }],
    ['knee-brace-blurred', 655],
    ['hill-side-west-end', 671],
    ['lake-side-boarding', 684, { kind: 'off-site', east: 1900, north: -1500 }],
    ['bearers-pegged', 719, { kind: 'no-position' }],
    ['slip-wall-lath', 752],
  ]),
  ...rows('site', [
    ['upper-storey', 341],
    ['lake-side-eaves', 358],
    ['under-the-boards', 366],
    ['west-gable', 379, { kind: 'clock-mark' }],
    ['west-lath-going-on', 420],
    ['east-lath', 433],
    ['west-post-lath', 447],
  ]),
  {
    ...{ name: 'inside-joists-sent', shot: 'inside-joists', device: 'foreman', count: 2432 },
    trap: { kind: 'reduced-copy' },
  },
];
