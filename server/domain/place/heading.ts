import type { Readings } from '../contract/shapes.ts';
import type { HeadingFlag, PlaceHeading } from '../contract/place.ts';
import { fullCircle, type LatLon } from './geodesic.ts';
import { declinationAt, type Declination } from './magnetic-north.ts';

export interface Standpoint extends LatLon {
  readonly altitudeM: number | null;
}

/**
 * The camera's heading turned to true north, in degrees clockwise. A magnetic one is turned where the photo
 * was taken, or for want of that at the site; where it cannot be turned, or the file does not say which
 * north it means, it stays as it is and a flag says so.
 */
export function turnHeading(
  stated: NonNullable<Readings['heading']>,
  position: Standpoint | null,
  site: LatLon | null,
  instant: string,
): PlaceHeading {
  const { degrees, reference } = stated;
  if (reference !== 'magnetic') return asStated(stated, reference === 'unstated' ? ['north-not-stated'] : []);
  const at = position ?? (site && { ...site, altitudeM: null });
  if (!at) return asStated(stated, ['no-place-to-turn-at']);
  const declination = declinationAt(at, at.altitudeM, instant);
  if (!declination) return asStated(stated, ['no-magnetic-model']);
  return {
    ...{ trueDegrees: fullCircle(degrees + declination.degrees), stated: degrees, reference },
    ...turnedBy(declination),
    flags: position ? [] : ['turned-at-site'],
  };
}

function turnedBy({ degrees, uncertainty }: Declination) {
  return { declination: degrees, declinationUncertainty: uncertainty };
}

function asStated({ degrees, reference }: NonNullable<Readings['heading']>, flags: HeadingFlag[]) {
  return {
    ...{ trueDegrees: fullCircle(degrees), stated: degrees, reference },
    ...{ declination: null, declinationUncertainty: null, flags },
  };
}
