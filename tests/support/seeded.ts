/** Numbers in [0, 1) that a seed repeats (mulberry32, public domain, from memory). */
export type Chance = () => number;

export function seeded(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function oneOf<T>(chance: Chance, items: readonly T[]): T {
  const item = items[Math.floor(chance() * items.length)];
  if (item === undefined) throw new RangeError('There is nothing to choose from.');
  return item;
}

export function between(chance: Chance, from: number, to: number): number {
  return from + chance() * (to - from);
}
