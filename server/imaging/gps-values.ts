import type { Complaint } from '#domain/contract/complaints';
import type { Readings } from '#domain/contract/shapes';
import { instantText, wallMs } from '#domain/photo/wall-time';
import { TAG } from './exif-blocks.ts';
import { asNumbers, asText, numberValue, type Complain } from './exif-values.ts';

type Block = ReadonlyMap<number, unknown>;

/** Half the way round the earth; an error beyond it says nothing. */
const ERROR_RANGE = { min: 0, max: 20_000_000 };
/** From below the deepest mine to above the highest balloon. */
const ALTITUDE_RANGE = { min: -12_000, max: 60_000 };

export function positionValue(gps: Block, complain: Complain): Readings['position'] {
  if (!gps.has(TAG.lat) && !gps.has(TAG.lon)) return null;
  const lat = angle(gps.get(TAG.lat), gps.get(TAG.latRef), ['N', 'S'], 90);
  const lon = angle(gps.get(TAG.lon), gps.get(TAG.lonRef), ['E', 'W'], 180);
  const wrong = [lat, lon].find((angle) => typeof angle === 'string');
  if (wrong !== undefined) complain(wrong);
  if (typeof lat === 'string' || typeof lon === 'string') return null;
  // What receivers write before they know where they are.
  if (lat === 0 && lon === 0) {
    complain('position-zero');
    return null;
  }
  // Shifted by hundreds of metres against WGS-84, which every other text is taken for.
  if (/^tokyo/iu.test(asText(gps.get(TAG.mapDatum))?.trim() ?? '')) complain('datum-tokyo');
  const errorM = numberValue(gps.get(TAG.positionError), ERROR_RANGE, 'position-error', complain);
  return { lat, lon, errorM, altitudeM: altitude(gps, complain) };
}

/** Signed degrees out of degrees, minutes, seconds and the letter of the hemisphere, or a complaint. */
function angle(
  value: unknown,
  ref: unknown,
  letters: readonly [string, string],
  max: number,
): number | Complaint {
  const parts = asNumbers(value, 3);
  if (!parts) return 'position-wrong-type';
  if (!parts.every(Number.isFinite)) return 'position-not-a-number';
  const [degrees = 0, minutes = 0, seconds = 0] = parts;
  const size = degrees + minutes / 60 + seconds / 3600;
  if (degrees < 0 || minutes < 0 || minutes > 60 || seconds < 0 || seconds > 60 || size > max) {
    return 'position-out-of-range';
  }
  const letter = asText(ref)?.trim().charAt(0).toUpperCase();
  if (letter !== letters[0] && letter !== letters[1]) return 'position-hemisphere-missing';
  return letter === letters[1] && size !== 0 ? -size : size;
}

/** GPSAltitudeRef: 1 below sea level, since Exif 3.0 also 3 (below, sea level); the rest is above. */
function altitude(gps: Block, complain: Complain): number | null {
  const metres = numberValue(gps.get(TAG.altitude), ALTITUDE_RANGE, 'altitude', complain);
  const ref = asNumbers(gps.get(TAG.altitudeRef), 1)?.[0];
  return metres !== null && metres !== 0 && (ref === 1 || ref === 3) ? -metres : metres;
}

export function headingValue(gps: Block, complain: Complain): Readings['heading'] {
  const degrees = numberValue(gps.get(TAG.heading), { min: 0, max: 360 }, 'heading', complain);
  if (degrees === null) return null;
  const ref = asText(gps.get(TAG.headingRef))?.trim().charAt(0);
  return { degrees, reference: ref === 'T' ? 'true' : ref === 'M' ? 'magnetic' : 'unstated' };
}

/** GPSDateStamp and GPSTimeStamp are both UTC; one without the other is no instant. */
export function gpsTimeValue(gps: Block, complain: Complain): string | null {
  const date = gps.get(TAG.gpsDate);
  const time = gps.get(TAG.gpsTime);
  if (date === undefined && time === undefined) return null;
  if (date === undefined) complain('gps-date-missing');
  if (time === undefined) complain('gps-time-missing');
  if (date === undefined || time === undefined) return null;
  const midnight = midnightOf(date);
  const ofDay = msOfDay(time);
  if (midnight === null) complain('gps-date-invalid');
  if (ofDay === null) complain('gps-time-invalid');
  return midnight === null || ofDay === null ? null : instantText(midnight + ofDay);
}

/** `YYYY:MM:DD`; some cameras write NUL for the colons. */
function midnightOf(value: unknown): number | null {
  const parts = /^(\d{4})[:\0-](\d\d)[:\0-](\d\d)[\0 ]*$/u.exec(asText(value)?.trim() ?? '');
  return parts ? wallMs(`${parts[1]}-${parts[2]}-${parts[3]}T00:00:00`) : null;
}

function msOfDay(value: unknown): number | null {
  const parts = asNumbers(value, 3);
  if (!parts?.every((n) => Number.isFinite(n) && n >= 0)) return null;
  const [hours = 0, minutes = 0, seconds = 0] = parts;
  if (hours >= 24 || minutes >= 60 || seconds >= 61) return null;
  return Math.round((hours * 3600 + minutes * 60 + seconds) * 1000);
}
