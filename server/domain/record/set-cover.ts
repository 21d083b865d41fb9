/**
 * Numbers of sets that together hold every element that any of them holds: each time the set with the most
 * elements still wanting, of equal ones the first; at last those that the others make needless are left out.
 * At most H(n) times as many as the fewest, n the size of the largest set: Chvátal, "A greedy heuristic for the
 * set-covering problem", Mathematics of Operations Research 4 (1979). Elements are 0 … count − 1.
 */
export function greedyCover(sets: readonly (readonly number[])[], count: number): number[] {
  const holders: number[][] = Array.from({ length: count }, () => []);
  const own = sets.map((set) => [...new Set(set)]);
  for (const [number, set] of own.entries()) for (const element of set) holders[element]?.push(number);
  const wanting = own.map((set) => set.length);
  const isCovered = new Array<boolean>(count).fill(false);
  const chosen: number[] = [];
  for (;;) {
    const best = wanting.reduce((most, gain, number) => (gain > (wanting[most] ?? 0) ? number : most), 0);
    if (!((wanting[best] ?? 0) > 0)) return withoutNeedless(chosen, own, count);
    chosen.push(best);
    for (const element of own[best] ?? []) {
      if (isCovered[element]) continue;
      isCovered[element] = true;
      for (const holder of holders[element] ?? []) wanting[holder] = (wanting[holder] ?? 0) - 1;
    }
  }
}

/** The last chosen brought least, so it is asked first. */
function withoutNeedless(chosen: readonly number[], sets: readonly number[][], count: number): number[] {
  const times = new Array<number>(count).fill(0);
  const add = (number: number, step: number) => {
    for (const element of sets[number] ?? []) times[element] = (times[element] ?? 0) + step;
  };
  for (const number of chosen) add(number, 1);
  const kept: number[] = [];
  for (const number of chosen.toReversed()) {
    const isNeedless = (sets[number] ?? []).every((element) => (times[element] ?? 0) > 1);
    if (isNeedless) add(number, -1);
    else kept.unshift(number);
  }
  return kept;
}
