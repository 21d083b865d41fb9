import { DefaultExifToolOptions, inferLikelyOffsetMinutes } from 'exiftool-vendored';

/** One file of truth.json: ExifTool 12.57's numeric output, all groups. */
export type TagsOfFile = Readonly<Record<string, string | number | undefined>> & { SourceFile: string };

export const BASES = ['file name', 'own offset', 'GPS', 'zone of the place', 'zone of the house'] as const;

/**
 * When the picture was taken, by ExifTool's values and none of our rules or code: the wall time with the
 * offset written beside it; else the satellites' own time, where it and the wall time are a real offset
 * apart; else the wall time in the IANA zone of the place, and only without a position in the zone of the
 * house. More than one instant where the clocks changed and the wall time alone cannot tell.
 * Places and offsets are those of exiftool-vendored 35 (tz-lookup; its list of offsets in use), the rules
 * of a zone are ICU's, out of Intl.
 */
export interface CaptureTruth {
  readonly instants: readonly number[];
  readonly basis: (typeof BASES)[number];
}

/** A fix this much before or after the picture still tells the offset. Common practice. */
const FIX_MINUTES = 5;
/**
 * Pictures with Exif are no older than Exif itself (version 1.0, 1995, from memory), and no sample is younger
 * than its collection. What lies outside is an epoch: 1601, 1904, 1970, 1980, or was made to be wrong.
 */
const POSSIBLE = { from: Date.UTC(1995, 0), to: Date.UTC(2027, 0) };

export function captureTruth(tags: TagsOfFile, houseZone: string): CaptureTruth | null {
  const named = nameTime(tags.SourceFile);
  if (named !== null) return { instants: [named], basis: 'file name' };
  const wall = possible(wallMs(tags));
  const gps = possible(msOf(text(tags, 'GPSDateTime')));
  if (wall === null) return gps === null ? null : { instants: [gps], basis: 'GPS' };
  const own = ownOffset(tags);
  if (own !== null) return { instants: [wall - own * 60_000], basis: 'own offset' };
  const place = zoneOfPlace(tags);
  if (gps !== null && tellsUtc(gps, wall, place)) return { instants: [gps], basis: 'GPS' };
  return {
    instants: instantsIn(wall, place ?? houseZone),
    basis: place ? 'zone of the place' : 'zone of the house',
  };
}

/** The zone where the picture's position lies; null without a position on land. */
export function zoneOfPlace({ GPSLatitude: lat, GPSLongitude: lon }: TagsOfFile): string | null {
  if (typeof lat !== 'number' || typeof lon !== 'number') return null;
  if (Math.abs(lat) > 90 || Math.abs(lon) > 180) return null;
  const zone = DefaultExifToolOptions.geoTz(lat, lon);
  return zone === undefined || /^(?:Etc\/|UTC|GMT)/u.test(zone) ? null : zone;
}

/** The samples' own statement: files named UTC-… bear their instant in the name. */
function nameTime(name: string): number | null {
  const parts = /^UTC-(\d{4})(\d\d)(\d\d)-(\d\d)(\d\d)(\d\d)-/u.exec(name);
  return parts && msOf(`${parts.slice(1, 4).join(':')} ${parts.slice(4, 7).join(':')}`);
}

function wallMs(tags: TagsOfFile): number | null {
  const ms = msOf(text(tags, 'DateTimeOriginal') || text(tags, 'CreateDate'));
  const fraction = /^\d+$/u.exec(text(tags, 'SubSecTimeOriginal'))?.[0] ?? '0';
  return ms === null ? null : ms - (ms % 1000) + Math.floor(Number(`0.${fraction}`) * 1000);
}

/** Year first, any separators, a real day; the leap second is the second after it (POSIX). */
function msOf(value: string): number | null {
  const found = /^(\d{4})[-:/](\d\d)[-:/](\d\d)[ T](\d\d):(\d\d):(\d\d)(\.\d+)?/u.exec(value);
  if (!found) return null;
  const [y = 0, mo = 0, d = 0, h = 0, mi = 0, s = 0] = found.slice(1, 7).map(Number);
  const day = new Date(Date.UTC(y, mo - 1, d));
  const isReal = day.getUTCMonth() === mo - 1 && day.getUTCDate() === d && h < 24 && mi < 60 && s <= 60;
  return isReal ? Date.UTC(y, mo - 1, d, h, mi, s) + Math.floor(Number(found[7] ?? 0) * 1000) : null;
}

/** ±HH:MM as Exif 2.31 has it, up to +14:00, beside the date or at its end as XMP writes it; Z is UTC. */
function ownOffset(tags: TagsOfFile): number | null {
  const atEnd = /(?:Z|[+-]\d\d:\d\d)$/u.exec(text(tags, 'DateTimeOriginal'))?.[0];
  const written = atEnd ?? text(tags, 'OffsetTimeOriginal');
  if (written === 'Z') return 0;
  const parts = /^([+-])(\d\d):([0-5]\d)$/u.exec(written);
  // RFC 3339 §4.3: -00:00 says that the offset is unknown.
  if (!parts || written === '-00:00') return null;
  const minutes = Number(`${parts[1]}1`) * (Number(parts[2]) * 60 + Number(parts[3]));
  return minutes >= -720 && minutes <= 840 ? minutes : null;
}

/** Satellite time equal to the wall time, where no clock shows UTC, is the camera's time written twice. */
function tellsUtc(gps: number, wall: number, place: string | null): boolean {
  if (Math.floor(gps / 1000) === Math.floor(wall / 1000) && place !== null && offsetAt(gps, place) !== 0)
    return false;
  return inferLikelyOffsetMinutes((wall - gps) / 60_000, FIX_MINUTES) !== undefined;
}

/** Of a wall time in a zone: two where the hour comes twice, and the two guesses where it never comes. */
function instantsIn(wall: number, zone: string): number[] {
  const day = 86_400_000;
  const offsets = [...new Set([offsetAt(wall - day, zone), offsetAt(wall + day, zone)])];
  const guesses = offsets.map((minutes) => wall - minutes * 60_000);
  const real = guesses.filter((ms, i) => offsetAt(ms, zone) === offsets[i]);
  return real.length > 0 ? real : guesses;
}

function offsetAt(ms: number, zone: string): number {
  const parts = new Intl.DateTimeFormat('en', { timeZone: zone, timeZoneName: 'longOffset' }).formatToParts(
    ms,
  );
  const name = parts.find(({ type }) => type === 'timeZoneName')?.value ?? '';
  const [, sign = '+', hours = 0, minutes = 0] = /^GMT([+-])(\d\d):(\d\d)/u.exec(name) ?? [];
  return Number(`${sign}1`) * (Number(hours) * 60 + Number(minutes));
}

const possible = (ms: number | null): number | null =>
  ms !== null && ms >= POSSIBLE.from && ms < POSSIBLE.to ? ms : null;

const text = (tags: TagsOfFile, name: string): string => String(tags[name] ?? '').trim();
