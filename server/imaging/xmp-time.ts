import { wallMs } from '#domain/photo/wall-time';

/** XMP beyond this is not searched: a date stands near the start. */
const XMP_MAX_BYTES = 256 * 1024;

export interface XmpTime {
  readonly wallTime: string;
  readonly offsetMinutes: number | null;
}

/**
 * The date of capture out of an XMP packet, as exif:DateTimeOriginal or as photoshop:DateCreated, which the
 * Metadata Working Group's guidelines 2.0 name for it. Written as ISO 8601, where an offset belongs to the date.
 */
export function xmpTime(packet: Uint8Array): XmpTime | null {
  const text = Buffer.from(packet.subarray(0, XMP_MAX_BYTES)).toString('utf8');
  return parseIso(find(text, 'exif:DateTimeOriginal')) ?? parseIso(find(text, 'photoshop:DateCreated'));
}

/** The value of a simple property, written as attribute or as element. */
function find(text: string, property: string): string {
  const at = text.indexOf(property);
  if (at < 0) return '';
  const after = text.slice(at + property.length, at + property.length + 60);
  return /^\s*(?:=\s*["']|>)\s*([0-9T:.+Z-]{16,40})\s*["'<]/u.exec(after)?.[1] ?? '';
}

function parseIso(text: string): XmpTime | null {
  const parts = /^(\d{4}-\d\d-\d\dT\d\d:\d\d)(:\d\d)?(\.\d{1,9})?(Z|[+-]\d\d:\d\d)?$/u.exec(text);
  if (!parts) return null;
  const wallTime = `${parts[1]}${parts[2] ?? ':00'}${parts[3] ?? ''}`;
  if (wallMs(wallTime) === null) return null;
  return { wallTime, offsetMinutes: offsetOf(parts[4]) };
}

function offsetOf(text: string | undefined): number | null {
  if (text === undefined || text === '-00:00') return null;
  if (text === 'Z') return 0;
  const minutes = Number(text.slice(1, 3)) * 60 + Number(text.slice(4));
  const signed = text.startsWith('-') ? -minutes : minutes;
  return signed >= -720 && signed <= 840 ? signed : null;
}
