import type { Complaint, NameField, NumberField } from '#domain/contract/complaints';
import { wallMs } from '#domain/photo/wall-time';

/** Turns stored values into checked ones. What does not hold becomes null and leaves a complaint. */

export type Complain = (code: Complaint) => void;

const TEXT_MAX = 200;
const RAW_TEXT_MAX = 4096;

/** ASCII values; some writers store them as bytes of unknown type. Ends at the first NUL. */
export function asText(value: unknown): string | null {
  if (typeof value === 'string') return value.slice(0, RAW_TEXT_MAX);
  if (value instanceof Uint8Array) return Buffer.from(value.subarray(0, RAW_TEXT_MAX)).toString('latin1');
  return null;
}

/** A name to show: one line, no control characters, at most 200 characters. */
export function nameValue(value: unknown, field: NameField, complain: Complain): string | null {
  if (value === undefined) return null;
  const text = asText(value);
  if (text === null) return complained(complain, `${field}-wrong-type`);
  const clean = (text.split('\0')[0] ?? '').replace(/[\p{Cc}\p{Cf}\s]+/gu, ' ').trim();
  if (clean.length > TEXT_MAX) complain(`${field}-cut`);
  // Half a surrogate pair at the cut would not be text any more.
  const cut = clean
    .slice(0, TEXT_MAX)
    .replace(/[\ud800-\udbff]$/u, '')
    .trim();
  return cut === '' ? null : cut;
}

/** `YYYY:MM:DD HH:MM:SS`, also with - or / between the parts of the date. Exif: blank or zero means unknown. */
export function wallTimeValue(value: unknown, subSeconds: unknown, complain: Complain): string | null {
  if (value === undefined) return null;
  const text = asText(value)?.replaceAll('\0', ' ').trim();
  if (text === undefined) return complained(complain, 'time-original-wrong-type');
  if (/^[\s:0]*$/u.test(text)) return complained(complain, 'time-original-blank');
  const parts = /^(\d{4})([:/-])(\d\d)\2(\d\d)[ T](\d\d:\d\d:\d\d)$/u.exec(text);
  if (!parts) return complained(complain, 'time-original-invalid');
  const wallTime = `${parts[1]}-${parts[3]}-${parts[4]}T${parts[5]}`;
  if (wallMs(wallTime) === null) return complained(complain, 'time-original-invalid');
  return wallTime + fraction(subSeconds, complain);
}

/** Digits of a decimal fraction, blanks after them are padding. Source: Exif 0x9291. */
function fraction(value: unknown, complain: Complain): string {
  if (value === undefined) return '';
  const text = asText(value)?.replaceAll('\0', ' ').trim();
  if (text === '') return '';
  if (text === undefined || !/^\d+$/u.test(text)) {
    complain('subsec-invalid');
    return '';
  }
  return `.${text.slice(0, 9)}`;
}

/** Furthest offsets in use: Baker Island −12:00, Line Islands +14:00. */
const OFFSET_RANGE = { min: -720, max: 840 };

/** `+HH:MM`; 'Z' is read as zero. `-00:00` says that the offset is unknown (RFC 3339 §4.3). */
export function offsetValue(value: unknown, complain: Complain): number | null {
  if (value === undefined) return null;
  const text = asText(value)?.replaceAll('\0', ' ').trim();
  if (text === undefined) return complained(complain, 'offset-wrong-type');
  if (/^[\s:]*$/u.test(text)) return null;
  if (text === 'Z') return 0;
  const parts = /^([+-])(\d\d):([0-5]\d)$/u.exec(text);
  if (!parts || text === '-00:00') return complained(complain, 'offset-invalid');
  const minutes = (Number(parts[2]) * 60 + Number(parts[3])) * (parts[1] === '-' ? -1 : 1);
  const holds = minutes >= OFFSET_RANGE.min && minutes <= OFFSET_RANGE.max;
  return holds ? minutes : complained(complain, 'offset-invalid');
}

/** One number, also out of a list of one. 0/0 and 1/0 arrive as NaN and infinity and are complained about. */
export function numberValue(
  value: unknown,
  range: { min: number; max: number },
  field: NumberField,
  complain: Complain,
): number | null {
  if (value === undefined) return null;
  const number = asNumbers(value, 1)?.[0];
  if (number === undefined) return complained(complain, `${field}-wrong-type`);
  if (!Number.isFinite(number)) return complained(complain, `${field}-not-a-number`);
  return number >= range.min && number <= range.max ? number : complained(complain, `${field}-out-of-range`);
}

/** `count` numbers, or null where the value is something else. */
export function asNumbers(value: unknown, count: number): number[] | null {
  const list =
    typeof value === 'number' ? [value] : Array.isArray(value) || isTyped(value) ? Array.from(value) : [];
  const numbers = list.slice(0, count).filter((n) => typeof n === 'number');
  return numbers.length === count ? numbers : null;
}

function isTyped(value: unknown): value is Uint8Array | Uint16Array | Uint32Array {
  return ArrayBuffer.isView(value) && !(value instanceof DataView);
}

function complained(complain: Complain, code: Complaint): null {
  complain(code);
  return null;
}
