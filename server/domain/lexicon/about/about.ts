import type { AboutRows } from './about-kind.ts';
import { ABOUT_BEAMS } from './beams.ts';
import { ABOUT_FASTENERS } from './fasteners.ts';
import { ABOUT_FLOORS } from './floors.ts';
import { ABOUT_POSTS } from './posts.ts';
import { ABOUT_RAILS } from './rails.ts';
import { ABOUT_ROOFS } from './roofs.ts';
import { ABOUT_SERVICES } from './services.ts';
import { ABOUT_WALLS } from './walls.ts';

/**
 * What a kind does, how it is usually fastened and what a photo should show of it, in a module of its own
 * since only the lexicon's screens need it. Common practice of the trade in our own words. Published:
 * for earthen walls MoC Notification 1100 of 1981 as amended by MLIT 1543 of 2003 (rails wedged at the posts;
 * bamboo let into posts, beams and sill, nailed to rails, no marked gap to them). What must be inspected
 * before it is covered is for the local code and for licensed people to say, not for these sentences.
 */
export const ABOUT: AboutRows = {
  ...ABOUT_POSTS,
  ...ABOUT_RAILS,
  ...ABOUT_BEAMS,
  ...ABOUT_ROOFS,
  ...ABOUT_FLOORS,
  ...ABOUT_WALLS,
  ...ABOUT_FASTENERS,
  ...ABOUT_SERVICES,
};
