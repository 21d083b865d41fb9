import { sameBytes, type Hashing } from './hashing.ts';
import { hashPair } from './merkle-hashes.ts';

export interface InclusionClaim {
  /** From 0. */
  readonly index: number;
  readonly size: number;
  readonly leaf: Uint8Array;
  readonly head: Uint8Array;
}

/** Whether a leaf lies at its place under a head: RFC 9162 §2.1.3.2. Never throws. */
export function isIncluded(
  hashing: Hashing,
  { index, size, leaf, head }: InclusionClaim,
  path: readonly Uint8Array[],
): boolean {
  if (!areCounts(index, size) || index >= size || !areHashes([leaf, head, ...path])) return false;
  let [fn, sn, hash] = [index, size - 1, leaf];
  for (const step of path) {
    if (sn === 0) return false;
    if (isOdd(fn) || fn === sn) {
      hash = hashPair(hashing, step, hash);
      while (!isOdd(fn) && fn !== 0) [fn, sn] = [half(fn), half(sn)];
    } else hash = hashPair(hashing, hash, step);
    [fn, sn] = [half(fn), half(sn)];
  }
  return sn === 0 && sameBytes(hash, head);
}

export interface SizedHead {
  readonly size: number;
  readonly head: Uint8Array;
}

/**
 * Whether the larger tree begins with all that the smaller one holds: RFC 9162 §2.1.4.2. Equal sizes need equal
 * heads and no proof; from an empty tree nothing can be proved. Never throws.
 */
export function isConsistent(
  hashing: Hashing,
  first: SizedHead,
  second: SizedHead,
  proof: readonly Uint8Array[],
): boolean {
  if (!areCounts(first.size, second.size) || first.size < 1 || first.size > second.size) return false;
  if (first.size === second.size) return proof.length === 0 && sameBytes(first.head, second.head);
  const path = isPowerOfTwo(first.size) ? [first.head, ...proof] : proof;
  if (proof.length === 0 || !areHashes([first.head, second.head, ...proof])) return false;
  let [fn, sn] = [first.size - 1, second.size - 1];
  while (isOdd(fn)) [fn, sn] = [half(fn), half(sn)];
  let [old, now] = [path[0] as Uint8Array, path[0] as Uint8Array];
  for (const step of path.slice(1)) {
    if (sn === 0) return false;
    if (isOdd(fn) || fn === sn) {
      [old, now] = [hashPair(hashing, step, old), hashPair(hashing, step, now)];
      while (!isOdd(fn) && fn !== 0) [fn, sn] = [half(fn), half(sn)];
    } else now = hashPair(hashing, now, step);
    [fn, sn] = [half(fn), half(sn)];
  }
  return sn === 0 && sameBytes(old, first.head) && sameBytes(now, second.head);
}

// Sizes may exceed 32 bits, so no bit operations.
const isOdd = (n: number) => n % 2 === 1;
const half = (n: number) => Math.floor(n / 2);
const areCounts = (...numbers: number[]) => numbers.every((n) => Number.isSafeInteger(n) && n >= 0);
const areHashes = (hashes: readonly Uint8Array[]) => hashes.every((hash) => hash.length === 32);

function isPowerOfTwo(n: number): boolean {
  let power = 1;
  while (power < n) power *= 2;
  return power === n;
}
