import type { FenceVerdict } from '../contract/place.ts';

/**
 * On site only where the whole circle of error lies within the site, off site only where none of it does
 * (metres). Makers do not say with which confidence their error holds (Exif states none for
 * GPSHPositioningError; one phone system documents 68 %), so neither verdict is proof: both say what the
 * figure in the file allows, and what it allows to be either is told as such.
 */
export function decideFence(distanceM: number, errorM: number, radiusM: number): FenceVerdict {
  if (distanceM + errorM <= radiusM) return 'on-site';
  return distanceM - errorM > radiusM ? 'off-site' : 'cannot-tell';
}
