export interface Neighbours {
  readonly previous: string | null;
  readonly next: string | null;
  /** Counted from 1. */
  readonly at: number;
  readonly total: number;
}

/** Null where the photo is not in the list. */
export function neighboursIn(order: readonly string[], photo: string): Neighbours | null {
  const i = order.indexOf(photo);
  if (i < 0) return null;
  return { previous: order[i - 1] ?? null, next: order[i + 1] ?? null, at: i + 1, total: order.length };
}
