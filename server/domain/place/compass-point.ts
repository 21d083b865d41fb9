/** The sixteen points of the compass, clockwise from north. */
export const COMPASS_POINTS = [
  'n',
  'nne',
  'ne',
  'ene',
  'e',
  'ese',
  'se',
  'sse',
  's',
  'ssw',
  'sw',
  'wsw',
  'w',
  'wnw',
  'nw',
  'nnw',
] as const;
export type CompassPoint = (typeof COMPASS_POINTS)[number];

/** The nearest of them; of two that are equally near the one clockwise. */
export function compassPoint(degrees: number): CompassPoint {
  const step = Math.floor(degrees / 22.5 + 0.5);
  return COMPASS_POINTS[((step % 16) + 16) % 16] as CompassPoint;
}
