import type { Hashing } from './hashing.ts';

/** SHA-256(0x00 ‖ data): RFC 6962 §2.1. */
export function hashLeaf(hashing: Hashing, data: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(1 + data.length);
  bytes.set(data, 1);
  return hashing.digest(bytes);
}

/** SHA-256(0x01 ‖ left ‖ right): RFC 6962 §2.1. */
export function hashPair(hashing: Hashing, left: Uint8Array, right: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(1 + left.length + right.length);
  bytes[0] = 1;
  bytes.set(left, 1);
  bytes.set(right, 1 + left.length);
  return hashing.digest(bytes);
}
