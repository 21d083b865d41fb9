/** A place in plan, in mm. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

const apart = (a: Spot, b: Spot) => Math.hypot(b.x - a.x, b.y - a.y);
/** Less is rounding: without it two equal walks could be turned into each other for ever. */
const SHORTER_MM = 0.01;

/** The length of a walk from `start` through spots by their numbers, in mm. */
export function walkLength(order: readonly number[], spots: readonly Spot[], start: Spot): number {
  let here = start;
  return order.reduce((sum, number) => {
    const next = spots[number] as Spot;
    const step = apart(here, next);
    here = next;
    return sum + step;
  }, 0);
}

/** Always on to the nearest spot, of equally near ones the first. */
export function nearestFirst(spots: readonly Spot[], start: Spot): number[] {
  const left = new Set(spots.keys());
  const order: number[] = [];
  let here = start;
  while (left.size > 0) {
    const next = [...left].reduce((best, number) =>
      apart(here, spots[number] as Spot) < apart(here, spots[best] as Spot) ? number : best,
    );
    order.push(next);
    left.delete(next);
    here = spots[next] as Spot;
  }
  return order;
}

/**
 * One walk from `start` through all spots, by their numbers: nearest first, then parts turned round as long as
 * that shortens it (2-opt: Croes, "A method for solving traveling-salesman problems", Operations Research 6,
 * 1958). As the crow flies: stairs and walls are not known.
 */
export function walkThrough(spots: readonly Spot[], start: Spot): number[] {
  const order = nearestFirst(spots, start);
  const at = (i: number) => (i < 0 ? start : (spots[order[i] ?? -1] as Spot));
  let isShorter = true;
  while (isShorter) {
    isShorter = false;
    for (let i = 0; i < order.length - 1; i++)
      for (let j = i + 1; j < order.length; j++) {
        // The walk is open: behind its last spot nothing is to be reached.
        const isLast = j === order.length - 1;
        const before = apart(at(i - 1), at(i)) + (isLast ? 0 : apart(at(j), at(j + 1)));
        const after = apart(at(i - 1), at(j)) + (isLast ? 0 : apart(at(i), at(j + 1)));
        if (after > before - SHORTER_MM) continue;
        order.splice(i, j - i + 1, ...order.slice(i, j + 1).reverse());
        isShorter = true;
      }
  }
  return order;
}
