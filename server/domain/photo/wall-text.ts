/**
 * The wall time `YYYY-MM-DDTHH:MM:SS(.fff)` that a clock at `offsetMinutes` east of UTC shows at an instant.
 * Milliseconds are exact, finer digits are not kept; no fraction where there is none.
 */
export function wallTextOf(instant: string, offsetMinutes: number): string {
  const text = new Date(Date.parse(instant) + offsetMinutes * 60_000).toISOString().slice(0, -1);
  return text.replace('.000', '');
}
