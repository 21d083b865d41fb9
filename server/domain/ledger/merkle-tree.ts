/**
 * The Merkle tree of RFC 6962 §2.1, grown leaf by leaf. Hashes are 32 bytes (SHA-256).
 * The hash function is handed in, so that this file needs no platform.
 */
export type Sha256 = (bytes: Uint8Array) => Uint8Array;

/**
 * The perfect subtrees along the right edge of a tree of `size` leaves, largest first: one for each
 * set bit of `size`. Enough to append and to compute the head, in log n.
 */
export interface Frontier {
  readonly size: number;
  readonly peaks: readonly Uint8Array[];
}

export const EMPTY_FRONTIER: Frontier = { size: 0, peaks: [] };

/** SHA-256(0x00 ‖ data), RFC 6962 §2.1. */
export function leafHash(sha256: Sha256, data: Uint8Array): Uint8Array {
  return sha256(concat([Uint8Array.of(0), data]));
}

/** SHA-256(0x01 ‖ left ‖ right), RFC 6962 §2.1. */
export function nodeHash(sha256: Sha256, left: Uint8Array, right: Uint8Array): Uint8Array {
  return sha256(concat([Uint8Array.of(1), left, right]));
}

export function appendLeaf(sha256: Sha256, frontier: Frontier, leaf: Uint8Array): Frontier {
  const peaks = [...frontier.peaks];
  let carried = leaf;
  // Every trailing set bit of the size is a peak of equal height to merge with.
  for (let size = frontier.size; size % 2 === 1; size = (size - 1) / 2) {
    carried = nodeHash(sha256, peaks.pop() as Uint8Array, carried);
  }
  return { size: frontier.size + 1, peaks: [...peaks, carried] };
}

/** MTH of RFC 6962 §2.1; the empty tree's head is SHA-256 of nothing. */
export function treeHead(sha256: Sha256, { peaks }: Frontier): Uint8Array {
  const last = peaks.at(-1);
  if (!last) return sha256(new Uint8Array());
  return peaks.slice(0, -1).reduceRight((right, left) => nodeHash(sha256, left, right), last);
}

export function packFrontier({ peaks }: Frontier): Uint8Array {
  return concat(peaks);
}

/** The reverse of packFrontier; throws RangeError where size and bytes do not agree. */
export function unpackFrontier(size: number, bytes: Uint8Array): Frontier {
  const peaks: Uint8Array[] = [];
  for (let at = 0; at + 32 <= bytes.length; at += 32) peaks.push(bytes.slice(at, at + 32));
  const wanted = size
    .toString(2)
    .split('')
    .filter((bit) => bit === '1').length;
  if (peaks.length !== wanted || bytes.length !== wanted * 32)
    throw new RangeError(`A tree of ${size} leaves has ${wanted} peaks, not ${bytes.length / 32}.`);
  return { size, peaks };
}

function concat(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
