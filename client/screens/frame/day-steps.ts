const DAY_MS = 86_400_000;

/** The calendar day so many days on; days have no zone. */
export function dayAfter(day: string, days: number): string {
  return new Date(Date.parse(day) + days * DAY_MS).toISOString().slice(0, 10);
}

/** Within the first day and today; what is no day is today. */
export function dayWithin(asked: string | null, first: string, today: string): string {
  if (asked === null || !/^\d{4}-\d{2}-\d{2}$/u.test(asked) || Number.isNaN(Date.parse(asked))) return today;
  return asked < first ? first : asked > today ? today : asked;
}

/** The nearest day before or after on which the drawing changes; today is the last. */
export function nextChange(days: readonly string[], today: string, day: string, way: 1 | -1): string | null {
  const all = days.at(-1) === today ? days : [...days, today];
  return (way > 0 ? all.find((one) => one > day) : all.findLast((one) => one < day)) ?? null;
}
