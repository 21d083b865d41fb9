import geographic from 'geographiclib-geodesic';

/** Degrees, WGS-84; north and east positive. */
export interface LatLon {
  readonly lat: number;
  readonly lon: number;
}

/** Metres on a plane that touches the ellipsoid at its middle. */
export interface LocalM {
  readonly eastM: number;
  readonly northM: number;
}

/** `azimuth`: degrees clockwise from true north at the first point, 0 ≤ azimuth < 360. */
export interface Line {
  readonly distanceM: number;
  readonly azimuth: number;
}

const { WGS84 } = geographic.Geodesic;

/**
 * The shortest line on the WGS-84 ellipsoid, to about 15 nm whatever the two points (Karney, Algorithms for
 * geodesics, J. Geod. 87, 2013). Of two points in one place the azimuth is 0.
 */
export function measureLine(from: LatLon, to: LatLon): Line {
  const { s12 = NaN, azi1 = NaN } = WGS84.Inverse(from.lat, from.lon, to.lat, to.lon);
  return { distanceM: s12, azimuth: s12 === 0 ? 0 : fullCircle(azi1) };
}

/** Where that line ends; longitude in −180…180. */
export function followLine(from: LatLon, { distanceM, azimuth }: Line): LatLon {
  const { lat2 = NaN, lon2 = NaN } = WGS84.Direct(from.lat, from.lon, azimuth, distanceM);
  return { lat: lat2, lon: lon2 };
}

/** A point as seen from the middle: azimuthal equidistant, so distance and direction from the middle are true. */
export function localOf(middle: LatLon, point: LatLon): LocalM {
  const { distanceM, azimuth } = measureLine(middle, point);
  return { eastM: distanceM * sin(azimuth), northM: distanceM * cos(azimuth) };
}

export function pointOf(middle: LatLon, { eastM, northM }: LocalM): LatLon {
  const azimuth = fullCircle((Math.atan2(eastM, northM) * 180) / Math.PI);
  return followLine(middle, { distanceM: Math.hypot(eastM, northM), azimuth });
}

/** Any angle as 0 ≤ degrees < 360. */
export function fullCircle(degrees: number): number {
  const turned = ((degrees % 360) + 360) % 360;
  // A hair below zero rounds to 360.
  return turned === 360 ? 0 : turned;
}

const sin = (degrees: number) => Math.sin((degrees * Math.PI) / 180);
const cos = (degrees: number) => Math.cos((degrees * Math.PI) / 180);
