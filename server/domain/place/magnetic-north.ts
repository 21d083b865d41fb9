import geomagnetism from 'geomagnetism';
import type { LatLon } from './geodesic.ts';

export interface Declination {
  /** Degrees, east positive: true = magnetic + declination. Japanese tables count it west-positive. */
  readonly degrees: number;
  /** Of the model alone, one standard deviation in degrees; what iron near the compass does is not in it. */
  readonly uncertainty: number;
}

/** Weaker than this the needle does not find north: the blackout zone of the World Magnetic Model, in nT. */
const BLACKOUT_NT = 2000;

/**
 * Where the needle points, by the World Magnetic Model (NOAA NCEI and BGS), editions 2015 to 2025.
 * `altitudeM` in metres above the sea (the package wants kilometres; the difference to the ellipsoid changes
 * nothing that could be seen). null: at an instant that no edition covers, or near a magnetic pole.
 */
export function declinationAt(at: LatLon, altitudeM: number | null, instant: string): Declination | null {
  const model = modelOf(instant);
  if (!model) return null;
  const { decl, h } = model.point([at.lat, at.lon, (altitudeM ?? 0) / 1000]);
  if (!Number.isFinite(decl) || h < BLACKOUT_NT) return null;
  // The error model of WMM2025: √(0.26² + (5417 / H)²), H in nT. From memory; NOAA's ±0.30° at Taipei agrees.
  return { degrees: decl, uncertainty: Math.hypot(0.26, 5417 / h) };
}

/** The package refuses instants outside its editions by throwing. */
function modelOf(instant: string) {
  try {
    return geomagnetism.model(new Date(instant));
  } catch {
    return null;
  }
}
