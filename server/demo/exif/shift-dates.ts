import { fieldsOf, type Field } from './fields.ts';

/** Tags whose value begins with a day, "YYYY:MM:DD": ModifyDate, DateTimeOriginal, CreateDate, GPSDateStamp (Exif 2.32). */
const DATES = {
  image: [0x0132],
  exif: [0x9003, 0x9004],
  gps: [0x001d],
} as const satisfies Record<Field['folder'], readonly number[]>;
const DAY = /^\d{4}:\d{2}:\d{2}/;
const DAY_LENGTH = 10;
const DAY_MS = 86_400_000;

/**
 * The same JPEG with every day in its Exif segment so many days later; no other byte differs, and clock times stay.
 * A GPS day is UTC and moves by as many. Days that are none (blank, all zeros) stay as they are.
 */
export function shiftDates(jpeg: Uint8Array, days: number): Uint8Array {
  const shifted = Uint8Array.from(jpeg);
  // Two tags may share one value: it must not move twice.
  const places = new Set(
    fieldsOf(jpeg)
      .filter(isDate)
      .map(({ at }) => at),
  );
  for (const at of places) {
    const text = String.fromCharCode(...jpeg.subarray(at, at + DAY_LENGTH));
    const later = DAY.test(text) ? dayLater(text, days) : null;
    if (later !== null) shifted.set(new TextEncoder().encode(later), at);
  }
  return shifted;
}

function isDate({ folder, tag, count }: Field): boolean {
  return count >= DAY_LENGTH && (DATES[folder] as readonly number[]).includes(tag);
}

function dayLater(text: string, days: number): string | null {
  const time = Date.parse(text.replaceAll(':', '-'));
  if (Number.isNaN(time)) return null;
  return new Date(time + days * DAY_MS).toISOString().slice(0, DAY_LENGTH).replaceAll('-', ':');
}
