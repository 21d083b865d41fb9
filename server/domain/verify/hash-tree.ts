import type { Hashing } from './hashing.ts';
import { hashPair } from './merkle-hashes.ts';

/**
 * The Merkle tree over the leaf hashes so far, by the recursive definitions of RFC 6962 §2.1. Subtrees of
 * 2^k leaves never change again and are kept, so that the head after each of n entries costs log n.
 */
export class HashTree {
  readonly #leaves: Uint8Array[] = [];
  /** By first leaf and number of leaves. */
  readonly #whole = new Map<string, Uint8Array>();

  constructor(private readonly hashing: Hashing) {}

  get size(): number {
    return this.#leaves.length;
  }

  /** `leaf` is the hash of an entry, not the entry. */
  append(leaf: Uint8Array): void {
    this.#leaves.push(leaf);
  }

  leaf(index: number): Uint8Array {
    this.#assertSize(index + 1);
    return this.#leaves[index] as Uint8Array;
  }

  /** MTH(D[0:size]). Throws RangeError where there are fewer entries. */
  head(size = this.size): Uint8Array {
    this.#assertSize(size);
    return size === 0 ? this.hashing.digest(new Uint8Array()) : this.#hash(0, size);
  }

  /** PATH(index, D[0:size]), §2.1.1. */
  inclusion(index: number, size = this.size): Uint8Array[] {
    this.#assertSize(size);
    if (!(index >= 0 && index < size)) throw new RangeError(`There is no entry ${index} among ${size}.`);
    return this.#path(index, 0, size);
  }

  /** PROOF(first, D[0:second]), §2.1.2; empty for equal sizes. `first` is at least 1. */
  consistency(first: number, second = this.size): Uint8Array[] {
    this.#assertSize(second);
    if (!(first >= 1 && first <= second))
      throw new RangeError(`There is no proof from ${first} to ${second} entries.`);
    return this.#subproof(first, 0, second, true);
  }

  #hash(from: number, count: number): Uint8Array {
    if (count === 1) return this.#leaves[from] as Uint8Array;
    const key = `${from} ${count}`;
    const known = this.#whole.get(key);
    if (known) return known;
    const left = splitOf(count);
    const hash = hashPair(this.hashing, this.#hash(from, left), this.#hash(from + left, count - left));
    if (left * 2 === count) this.#whole.set(key, hash);
    return hash;
  }

  #path(index: number, from: number, count: number): Uint8Array[] {
    if (count === 1) return [];
    const left = splitOf(count);
    return index < left
      ? [...this.#path(index, from, left), this.#hash(from + left, count - left)]
      : [...this.#path(index - left, from + left, count - left), this.#hash(from, left)];
  }

  /** `isKnown`: whether the checker has the head of this very subtree already. */
  #subproof(first: number, from: number, count: number, isKnown: boolean): Uint8Array[] {
    if (first === count) return isKnown ? [] : [this.#hash(from, count)];
    const left = splitOf(count);
    return first <= left
      ? [...this.#subproof(first, from, left, isKnown), this.#hash(from + left, count - left)]
      : [...this.#subproof(first - left, from + left, count - left, false), this.#hash(from, left)];
  }

  #assertSize(size: number): void {
    if (!(Number.isInteger(size) && size >= 0 && size <= this.size))
      throw new RangeError(`There are ${this.size} entries, not ${size}.`);
  }
}

/** The largest power of two smaller than `count`, which is at least 2. */
function splitOf(count: number): number {
  let split = 1;
  while (split * 2 < count) split *= 2;
  return split;
}
