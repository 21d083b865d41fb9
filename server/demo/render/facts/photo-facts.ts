import { Random } from '../random.ts';
import { seedOf, type Shot } from '../shots/shot.ts';
import { SHOTS } from '../shots/shots.ts';
import { bearingOf, positionOf, type LatLon } from '../shots/site-on-earth.ts';
import { DEVICES, FILE_NAMES } from './devices.ts';
import { PHOTO_ROWS, type PhotoRow } from './photos.ts';

/** What a photo's file says of itself, and what is true. */
export interface PhotoFacts extends PhotoRow {
  /** As its device named it. */
  readonly fileName: string;
  readonly make: string;
  readonly model: string;
  readonly serial: string;
  /** True, on site: days after the raising, and HH:MM:SS. */
  readonly day: number;
  readonly time: string;
  /** What the device's clock said; null where nothing is written. */
  readonly wallTime: { readonly day: number; readonly time: string } | null;
  readonly position: (LatLon & { readonly errorM: number }) | null;
  /** Degrees from true north. */
  readonly heading: number | null;
  readonly focal35: number;
}

/** That of Japan, the whole year. */
export const OFFSET = '+09:00';

/** How far a receiver and a compass are out. */
const POSITION_M = 5;
const HEADING_DEGREES = 4;

/** In the order in which they were taken. */
export const PHOTO_FACTS: readonly PhotoFacts[] = PHOTO_ROWS.map(factsOf).sort(
  (a, b) => a.day - b.day || a.time.localeCompare(b.time),
);

function factsOf(row: PhotoRow): PhotoFacts {
  const shot = SHOTS.find(({ name }) => name === row.shot);
  if (!shot) throw new RangeError(`There is no shot ${row.shot}.`);
  const { minutesSlow, ...device } = DEVICES[row.device];
  const { day, time } = shot;
  return {
    ...row,
    ...device,
    ...{ day, time, focal35: shot.view.focal35, fileName: FILE_NAMES[row.device](row.count) },
    wallTime: row.trap?.kind === 'no-time' ? null : { day, time: earlier(time, minutesSlow) },
    ...placeOf(row, shot),
  };
}

/** As a receiver under timber and boards has it. */
function placeOf({ trap }: PhotoRow, shot: Shot): Pick<PhotoFacts, 'position' | 'heading'> {
  const random = new Random(seedOf(shot));
  const [east, north] = [random.about(POSITION_M), random.about(POSITION_M)];
  const errorM = Math.round(10 * random.between(4, 12)) / 10;
  const heading = bearingOf(shot.view.position, shot.view.lookAt) + random.about(HEADING_DEGREES);
  if (trap?.kind === 'no-position' || trap?.kind === 'reduced-copy') return { position: null, heading: null };
  const away = trap?.kind === 'off-site' ? trap : { east: 0, north: 0 };
  return {
    position: {
      ...positionOf(shot.view.position, { east: east + away.east, north: north + away.north }),
      errorM,
    },
    heading: Math.round(10 * ((heading + 360) % 360)) / 10,
  };
}

/** Nobody takes photos so soon after midnight that this would be another day. */
function earlier(time: string, minutes: number): string {
  const [h = 0, m = 0, s = 0] = time.split(':').map(Number);
  const all = 60 * h + m - minutes;
  return [Math.floor(all / 60), all % 60, s].map((n) => String(n).padStart(2, '0')).join(':');
}
