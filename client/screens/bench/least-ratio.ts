/** A picture may be drawn a third larger than it is before a larger one is fetched for it. */
const SHARP = 0.75;
/** So far a picture may be zoomed out before it gives way to a smaller one. */
const ROOM = 0.75;

/**
 * The least share of its own width, in pixels of the screen, at which a picture is still the one to show: of the pictures
 * of a photo, from small to large, the first that is sharp where the whole photo is seen, `shown` CSS pixels wide. A
 * smaller one would be a blur there, and a larger one is worth its bytes only nearer, from half of its size at the latest.
 */
export function leastRatio(
  levels: readonly { readonly width: number }[],
  shown: number,
  density: number,
): number {
  const pixels = shown * density;
  const fit = levels.find(({ width }) => width >= pixels * SHARP) ?? levels.at(-1);
  return fit ? Math.min(0.5, (ROOM * pixels) / fit.width) : 0.5;
}
