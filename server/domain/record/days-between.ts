const DAY_MS = 86_400_000;

/** Whole days from one calendar day (YYYY-MM-DD) to another, negative when it lies before. Days have no zone. */
export function daysBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / DAY_MS;
}
