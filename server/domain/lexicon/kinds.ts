import { spellings, type Kind } from './kind.ts';
import { BEAMS } from './kinds/beams.ts';
import { FASTENERS } from './kinds/fasteners.ts';
import { FLOORS } from './kinds/floors.ts';
import { POSTS } from './kinds/posts.ts';
import { RAILS } from './kinds/rails.ts';
import { ROOFS } from './kinds/roofs.ts';
import { SERVICES } from './kinds/services.ts';
import { WALLS } from './kinds/walls.ts';

export { spellings, type Kind };

/**
 * Names, glosses, tracks, sections and what hides a piece: common practice of Japanese and Western timber
 * framing, except where a table names a published source. What stands in the plane of an earthen wall has
 * track 'wall': posts too, since their mortises, wedges and lath holes are last seen before the first coat.
 * What is no timber (pipes, sheets, fillings) has the track of the lath: it is put in place, and then hidden.
 * A house that builds otherwise states the track of a member in its schedule, or changes the kind for itself.
 */
export const KINDS: readonly Kind[] = [
  ...POSTS,
  ...RAILS,
  ...BEAMS,
  ...ROOFS,
  ...FLOORS,
  ...WALLS,
  ...FASTENERS,
  ...SERVICES,
];
