/** SHA-256 (FIPS 180-4), handed in: the verifier has no platform of its own. Digests are 32 bytes. */
export interface Hashing {
  digest(bytes: Uint8Array): Uint8Array;
  /** For what is too large to be held whole. */
  begin(): RunningHash;
}

export interface RunningHash {
  add(bytes: Uint8Array): void;
  digest(): Uint8Array;
}

export const HEX_HASH = /^[0-9a-f]{64}$/;

const HEX = Array.from({ length: 256 }, (_, byte) => byte.toString(16).padStart(2, '0'));

export function toHex(bytes: Uint8Array): string {
  let hex = '';
  for (const byte of bytes) hex += HEX[byte] ?? '';
  return hex;
}

/** The bytes of an even number of hex digits; of anything else the result is of no use. */
export function fromHex(hex: string): Uint8Array {
  return Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}

export function sameBytes(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, i) => byte === other[i]);
}
