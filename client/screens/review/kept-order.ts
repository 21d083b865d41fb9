import { useState } from 'react';

/** `lines` in the order in which their marks came first, and puts down those that are new, after all others. */
export function inKeptOrder<L extends { readonly mark: string }>(
  lines: readonly L[],
  places: Map<string, number>,
): L[] {
  for (const { mark } of lines) if (!places.has(mark)) places.set(mark, places.size);
  return lines.toSorted((a, b) => (places.get(a.mark) ?? 0) - (places.get(b.mark) ?? 0));
}

/** Nothing moves under the hands of whoever reviews, whatever comes first meanwhile. */
export function useKeptOrder<L extends { readonly mark: string }>(lines: readonly L[]): L[] {
  const [places] = useState(() => new Map<string, number>());
  return inKeptOrder(lines, places);
}
