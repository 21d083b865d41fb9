/** 64 bits of a difference hash as 16 hex digits, row by row; a bit is set where the left of two is darker. */
export type PictureHash = string;

/**
 * Bits in which two pictures of one scene may differ: "distance of 5 means … almost identical" (README of the
 * dHash tool by Tom64b).
 */
export const NEARLY_SAME_BITS = 5;
/** Of two taken in one go, between which the hand moved; 6 to 10 bits are "possibly related" (libphp guide). */
export const BURST_BITS = 10;
/** Between one photo of a burst and the next. *Common practice.* */
export const BURST_GAP_MS = 10_000;
/** Fewer bits of one kind are a blank wall or a plain gradient, which says nothing of what is shown. */
export const LEAST_BITS = 8;
/**
 * Share of the largest picture's pixels below which another of the same scene is never proposed: sharpness is
 * measured at one size, at which a reduced copy is as crisp as its original, or crisper.
 */
export const LEAST_PIXELS = 0.5;

export function hamming(a: PictureHash, b: PictureHash): number {
  return countBits(BigInt(`0x${a}`) ^ BigInt(`0x${b}`));
}

/** Whether a hash tells pictures apart at all. */
export function tellsApart(hash: PictureHash): boolean {
  const set = countBits(BigInt(`0x${hash}`));
  return set >= LEAST_BITS && set <= 64 - LEAST_BITS;
}

export interface HashedPhoto {
  readonly id: string;
  readonly hash: PictureHash;
}

export interface AlikePair {
  readonly a: string;
  readonly b: string;
  /** Bits in which their hashes differ. */
  readonly distance: number;
}

/**
 * Pairs that are nearly the same picture, each once and `a` before `b`; only those with one of `wanted` in
 * it, or all for null. O(n²), some nanoseconds a pair: what a clock mark moves may be most of a house.
 */
export function nearlySameAmong(
  photos: readonly HashedPhoto[],
  wanted: ReadonlySet<string> | null,
): AlikePair[] {
  const known = photos.filter(({ hash }) => tellsApart(hash)).toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const high = Uint32Array.from(known, ({ hash }) => parseInt(hash.slice(0, 8), 16));
  const low = Uint32Array.from(known, ({ hash }) => parseInt(hash.slice(8), 16));
  const isWanted = known.map(({ id }) => wanted === null || wanted.has(id));
  const pairs: AlikePair[] = [];
  known.forEach(({ id: a }, i) => {
    const [ownHigh, ownLow] = [high[i] ?? 0, low[i] ?? 0];
    for (let j = i + 1; j < known.length; j += 1) {
      if (!isWanted[i] && !isWanted[j]) continue;
      const distance = bitsIn(ownHigh ^ (high[j] ?? 0)) + bitsIn(ownLow ^ (low[j] ?? 0));
      if (distance <= NEARLY_SAME_BITS) pairs.push({ a, b: known[j]?.id ?? '', distance });
    }
  });
  return pairs;
}

/** Bits set in 32, counted side by side. Source: Warren, Hacker's Delight, 5-1. */
function bitsIn(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const nibbles = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((nibbles + (nibbles >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** What decides which of several pictures of one scene is worth being tagged. */
export interface RatedPhoto {
  readonly id: string;
  /** Of the original, in pixels. */
  readonly width: number;
  readonly height: number;
  /** null: not measured. */
  readonly sharpness: number | null;
}

export interface BurstPhoto extends RatedPhoto {
  /** Milliseconds since 1970. */
  readonly at: number;
  /** Same text, same camera; null: unknown. */
  readonly camera: string | null;
  readonly hash: PictureHash | null;
}

export interface Burst {
  /** In order of capture, two at least. */
  readonly photos: string[];
  readonly sharpest: string;
}

/** Photos of one camera, each at most ten seconds and ten bits away from the one before. */
export function findBursts(photos: readonly BurstPhoto[]): Burst[] {
  const inOrder = [...photos].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
  const open = new Map<string, BurstPhoto[]>();
  const found: BurstPhoto[][] = [];
  for (const photo of inOrder) {
    if (photo.camera === null) continue;
    const burst = open.get(photo.camera);
    const last = burst?.at(-1);
    if (burst && last && follows(last, photo)) {
      burst.push(photo);
      continue;
    }
    const begun = [photo];
    open.set(photo.camera, begun);
    found.push(begun);
  }
  return found.filter((burst) => burst.length > 1).map(toBurst);
}

function follows(before: BurstPhoto, after: BurstPhoto): boolean {
  if (before.hash === null || after.hash === null) return false;
  return (
    after.at - before.at <= BURST_GAP_MS &&
    tellsApart(before.hash) &&
    tellsApart(after.hash) &&
    hamming(before.hash, after.hash) <= BURST_BITS
  );
}

function toBurst(photos: readonly BurstPhoto[]): Burst {
  return { photos: photos.map(({ id }) => id), sharpest: sharpestOf(photos) };
}

/**
 * The sharpest of those that have at least half as many pixels as the largest; of equals the one with more
 * pixels, then the first.
 */
export function sharpestOf(photos: readonly RatedPhoto[]): string {
  const most = Math.max(...photos.map(pixels));
  return photos
    .filter((photo) => pixels(photo) >= most * LEAST_PIXELS)
    .reduce((best, photo) => (bySharpness(photo, best) > 0 ? photo : best)).id;
}

function bySharpness(a: RatedPhoto, b: RatedPhoto): number {
  return (a.sharpness ?? -1) - (b.sharpness ?? -1) || pixels(a) - pixels(b);
}

const pixels = ({ width, height }: RatedPhoto) => width * height;

function countBits(value: bigint): number {
  let count = 0;
  for (let rest = value; rest > 0n; rest &= rest - 1n) count += 1;
  return count;
}

/** The same hash as a database keeps it: 64 characters 0 and 1, the first bit first. */
export function bitsOfHash(hash: PictureHash): string {
  return BigInt(`0x${hash}`).toString(2).padStart(64, '0');
}

export function hashOfBits(bits: string): PictureHash {
  return BigInt(`0b${bits}`).toString(16).padStart(16, '0');
}
