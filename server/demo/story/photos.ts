import { PHOTO_FACTS } from '../render/facts/photo-facts.ts';
import type { DeviceName } from '../render/facts/devices.ts';
import type { Who } from './people.ts';
import type { PhotoRow } from './photo.ts';

/** What somebody has said already what it shows. The rest, and all that is wrong with them, is left to be found. */
const TAGGED: ReadonlySet<string> = new Set([
  'first-frames',
  'lake-side-raising',
  'corner-pegged',
  'lake-side-rafters',
  'lake-side-eaves',
  'scaffold-west-rafters',
  'scaffold-east-rafters',
  'hill-side-west-end',
  'under-the-boards',
  'west-gable',
  'bearers-pegged',
  'inside-joists',
  'west-lath-going-on',
  'slip-wall-lath',
]);

/** Who adds what a device has taken: the site camera lies in the second carpenter's box. */
const BRINGS: Readonly<Record<DeviceName, Who>> = {
  foreman: 'carpenter',
  carpenter: 'second',
  site: 'second',
};

/** In the order in which they were taken. */
export const PHOTOS: readonly PhotoRow[] = PHOTO_FACTS.map((facts) => {
  const { name, shot, fileName, day, time, device, trap } = facts;
  return {
    ...{ name, shot, fileName, day, time, by: BRINGS[device], facts },
    ...{ isTagged: TAGGED.has(name), showsClock: trap?.kind === 'clock-mark' },
  };
});
