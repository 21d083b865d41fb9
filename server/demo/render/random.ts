/** The same seed gives the same numbers: Mulberry32 (T. Ettinger, public domain), 32 bits of state. */
export class Random {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0;
  }

  reseed(seed: number): void {
    this.state = seed | 0;
  }

  /** From 0, below 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  /** Either side of zero. */
  about(reach: number): number {
    return this.between(-reach, reach);
  }

  chance(share: number): boolean {
    return this.next() < share;
  }
}

/** A seed for each pair, so that neighbouring pixels and seeds have nothing in common. */
export function pairSeed(one: number, other: number): number {
  return Math.imul(one + 1, 0x9e3779b1) ^ Math.imul(other + 1, 0x85ebca6b);
}
