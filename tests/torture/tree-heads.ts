import { createHash } from 'node:crypto';

/**
 * Tree heads by the recursion of RFC 6962 §2.1 as it is printed there, not by the server's frontier.
 * Perfect subtrees are remembered: the recursion asks for them again and again.
 */
export class TreeHeads {
  readonly #known = new Map<string, Buffer>();
  readonly #leaves: Buffer[];

  constructor(entries: readonly string[]) {
    this.#leaves = entries.map((entry) => hash(Buffer.of(0), Buffer.from(entry, 'utf8')));
  }

  leaf(seq: number): string {
    return this.#leaves[seq]?.toString('hex') ?? '';
  }

  /** The head over the first `size` entries. */
  head(size: number): string {
    return this.#mth(0, size).toString('hex');
  }

  #mth(from: number, to: number): Buffer {
    if (to - from === 1) return this.#leaves[from] as Buffer;
    const key = `${from}:${to}`;
    const known = this.#known.get(key);
    if (known) return known;
    const split = from + largestPowerBelow(to - from);
    const made = hash(Buffer.of(1), this.#mth(from, split), this.#mth(split, to));
    if (Number.isInteger(Math.log2(to - from))) this.#known.set(key, made);
    return made;
  }
}

function largestPowerBelow(n: number): number {
  let k = 1;
  while (k * 2 < n) k *= 2;
  return k;
}

function hash(...parts: Uint8Array[]): Buffer {
  return createHash('sha256').update(Buffer.concat(parts)).digest();
}
