import type { Site } from '#domain/contract/shapes';
import { SITE as CROSSING } from '../render/shots/site-on-earth.ts';

/** Where the boathouse stands, as the positions in the pictures have it: the plot, its shore and the lane. */
export const SITE: Site = { lat: CROSSING.lat, lon: CROSSING.lon, radiusM: 60 };
