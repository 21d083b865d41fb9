import type { Readings } from '#domain/contract/shapes';

/** The fields that are compared, as ExifTool's numeric output (-n, group Exif) has them. */
export const FIELDS = [
  'DateTimeOriginal',
  'SubSecTimeOriginal',
  'OffsetTimeOriginal',
  'GPSLatitude',
  'GPSLongitude',
  'GPSAltitude',
  'GPSHPositioningError',
  'GPSImgDirection',
  'GPSImgDirectionRef',
  'GPSTime',
  'Orientation',
  'Make',
  'Model',
  'FocalLength',
  'FocalLengthIn35mmFormat',
] as const;
export type Field = (typeof FIELDS)[number];

export type Truth = Partial<Record<string, string | number>>;
type Value = string | number | null;

/** ExifTool's value in our terms. Angles carry no sign in the Exif group; the letter stands in a field of its own. */
export function trueValue(truth: Truth, field: Field): Value {
  if (field === 'GPSTime') return gpsTime(truth);
  const value = truth[field];
  if (value === undefined || value === '') return null;
  if (field === 'SubSecTimeOriginal') return fractionDigits(String(value).trim());
  if (field === 'DateTimeOriginal') return String(value).trim().replaceAll('-', ':');
  return typeof value === 'string' ? value.trim() || null : value;
}

function gpsTime({ GPSDateStamp: date, GPSTimeStamp: time }: Truth): string | null {
  if (date === undefined || time === undefined) return null;
  return `${String(date).replaceAll(':', '-')}T${String(time)}`.replace(/\.(\d+)$/u, (_, digits: string) =>
    Number(digits) === 0 ? '' : `.${digits.padEnd(3, '0').slice(0, 3)}`,
  );
}

/** JSON turned digits with leading zeros into text and the others into numbers; trailing zeros say nothing. */
const fractionDigits = (text: string): string | null => text.replace(/0+$/u, '') || null;

/** Our reading in the same terms. */
export function readValue(readings: Readings, field: Field): Value {
  const [date, fraction] = readings.wallTime?.split('.') ?? [];
  const size = (angle: number | undefined) => (angle === undefined ? null : Math.abs(angle));
  const values: Record<Field, Value> = {
    DateTimeOriginal: date?.replaceAll('-', ':').replace('T', ' ') ?? null,
    SubSecTimeOriginal: fractionDigits(fraction ?? ''),
    OffsetTimeOriginal: readings.offsetMinutes === null ? null : offsetText(readings.offsetMinutes),
    GPSLatitude: size(readings.position?.lat),
    GPSLongitude: size(readings.position?.lon),
    GPSAltitude: size(readings.position?.altitudeM ?? undefined),
    GPSHPositioningError: readings.position?.errorM ?? null,
    GPSImgDirection: readings.heading?.degrees ?? null,
    GPSImgDirectionRef: { true: 'T', magnetic: 'M', unstated: null }[
      readings.heading?.reference ?? 'unstated'
    ],
    GPSTime: readings.gpsTime?.replace('.000Z', '').replace('Z', '') ?? null,
    Orientation: readings.orientation,
    Make: readings.make,
    Model: readings.model,
    FocalLength: readings.focalLengthMm,
    FocalLengthIn35mmFormat: readings.focalLength35Mm,
  };
  return values[field];
}

function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** Equal, numbers to one part in a million. ExifTool writes fewer digits than a double holds. */
export function sameValue(a: Value, b: Value): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(a));
  // A name of digits alone is a number in ExifTool's JSON.
  return a === b || (a !== null && b !== null && String(a) === String(b));
}

export function differences(readings: Readings, truth: Truth): Record<string, [ours: Value, truth: Value]> {
  const unlike = FIELDS.filter((field) => !sameValue(readValue(readings, field), trueValue(truth, field)));
  return Object.fromEntries(
    unlike.map((field) => [field, [readValue(readings, field), trueValue(truth, field)]]),
  );
}
