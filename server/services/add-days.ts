const DAY_MS = 24 * 60 * 60 * 1000;

/** So many times 24 hours later: until when a link holds. */
export function addDays(at: Date, days: number): Date {
  return new Date(at.getTime() + days * DAY_MS);
}
