import { dayAfter } from '#domain/frame/invented/invented-house';

export const ZONE = 'Asia/Tokyo';
const OFFSET = '+09:00';

/** The morning on which the demo opens, in days after the raising: photos and work lie behind it, up to last evening. */
export const THIS_MORNING = 29;

/** Before the first photo: the crew is on site. */
export const FIRST_DAY = -7;

/** The day of the raising, for a demo that is opened at this moment. */
export function raisingFor(now: Date): string {
  const today = new Intl.DateTimeFormat('en-CA', { timeZone: ZONE, dateStyle: 'short' }).format(now);
  return dayAfter(today, -THIS_MORNING);
}

/** An instant of the build, by its day and the clock on site, HH:MM or HH:MM:SS. */
export function momentOf(raising: string, day: number, clock: string): string {
  return new Date(`${dayAfter(raising, day)}T${clock}${OFFSET}`).toISOString();
}
