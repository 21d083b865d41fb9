import type { ReadPlace } from '../contract/place.ts';
import type { Readings, Site } from '../contract/shapes.ts';
import { decideFence } from './fence.ts';
import { fieldOfView } from './field-of-view.ts';
import { measureLine } from './geodesic.ts';
import { turnHeading } from './heading.ts';

/** Where a file states no error: about twice the 4.9 m of a phone under open sky (gps.gov), as found in towns. */
export const ASSUMED_ERROR_M = 10;
/** What the old Japanese datum shifts a position by, at most (from memory; 400 to 450 m in Honshu). */
export const TOKYO_SHIFT_M = 450;
const TOKYO = 'datum-tokyo';

/**
 * Where a photo was taken and which way it looked, by what its file says. `size` in pixels of the upright
 * picture; `instant` is when it was taken, or added where that is unknown. Decides nothing that is not there.
 */
export function placeOf(
  readings: Pick<Readings, 'position' | 'heading' | 'focalLength35Mm' | 'complaints'>,
  size: { readonly width: number; readonly height: number },
  site: Site | null,
  instant: string,
): ReadPlace {
  const position = positionOf(readings);
  return {
    position,
    heading: readings.heading && turnHeading(readings.heading, position, site, instant),
    fieldOfView: fieldOfView(readings.focalLength35Mm, size.width, size.height),
    site: position && site && siteOf(position, site),
  };
}

function positionOf({ position, complaints }: Pick<Readings, 'position' | 'complaints'>) {
  if (!position) return null;
  const { lat, lon, errorM: said, altitudeM } = position;
  // Nothing is without error: receivers write 0 for what they do not know.
  const errorStated = said !== null && said > 0;
  const isTokyo = complaints.includes(TOKYO);
  const errorM = (errorStated ? said : ASSUMED_ERROR_M) + (isTokyo ? TOKYO_SHIFT_M : 0);
  return {
    lat,
    lon,
    errorM,
    errorStated,
    altitudeM,
    datum: isTokyo ? ('tokyo' as const) : ('wgs-84' as const),
  };
}

function siteOf(position: NonNullable<ReadPlace['position']>, site: Site): NonNullable<ReadPlace['site']> {
  const line = measureLine(site, position);
  return { ...line, verdict: decideFence(line.distanceM, position.errorM, site.radiusM) };
}
