import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bitsOfHash,
  findBursts,
  hamming,
  hashOfBits,
  nearlySameAmong,
  sharpestOf,
  tellsApart,
  type BurstPhoto,
  type RatedPhoto,
} from '#domain/photo/alike';

const hex = fc.bigInt({ min: 0n, max: 2n ** 64n - 1n }).map((value) => value.toString(16).padStart(16, '0'));
const HASH = 'e0f8fef6f2ecfcf4';
const flip = (hash: string, bits: number) =>
  (BigInt(`0x${hash}`) ^ (2n ** BigInt(bits) - 1n)).toString(16).padStart(16, '0');

function photo(id: string, seconds: number, more: Partial<BurstPhoto> = {}): BurstPhoto {
  return {
    id,
    at: seconds * 1000,
    camera: 'Test Bars',
    hash: HASH,
    width: 3000,
    height: 4000,
    sharpness: 100,
    ...more,
  };
}

describe('how alike two pictures are', () => {
  // The pair published in the README of Tom64b/dHash.
  it('is 4 bits for the published pair', () => expect(hamming(HASH, 'e0f8eed4d2ecfcf4')).toBe(4));

  it('is a distance', () =>
    fc.assert(
      fc.property(hex, hex, hex, (a, b, c) => {
        expect(hamming(a, a)).toBe(0);
        expect(hamming(a, b)).toBe(hamming(b, a));
        expect(hamming(a, c)).toBeLessThanOrEqual(hamming(a, b) + hamming(b, c));
      }),
    ));

  /** Some bits flipped of a few hashes, so that many pairs are near the limit; blank ones among them. */
  const hashed = fc
    .array(
      fc.tuple(
        fc.constantFrom(HASH, 'ffffffff00000000', '0000000000000000'),
        fc.array(fc.nat(63), { maxLength: 5 }),
      ),
      { maxLength: 25 },
    )
    .map((list) =>
      list.map(([hash, bits], i) => {
        const flipped = bits.reduce((value, bit) => value ^ (1n << BigInt(bit)), BigInt(`0x${hash}`));
        return { id: `p${(i * 7) % 26}`, hash: flipped.toString(16).padStart(16, '0') };
      }),
    );
  it('is found among many as pair by pair, each once, with those that are asked for', () =>
    fc.assert(
      fc.property(
        hashed,
        fc.option(fc.subarray(['p0', 'p7', 'p14', 'p21']), { nil: null }),
        (photos, asked) => {
          const wanted = asked && new Set(asked);
          const expected = photos.flatMap((one) =>
            photos
              .filter((other) => one.id < other.id && tellsApart(one.hash) && tellsApart(other.hash))
              .filter((other) => !wanted || wanted.has(one.id) || wanted.has(other.id))
              .map((other) => ({ a: one.id, b: other.id, distance: hamming(one.hash, other.hash) }))
              .filter(({ distance }) => distance <= 5),
          );
          const byPair = (x: { a: string; b: string }, y: { a: string; b: string }) =>
            `${x.a} ${x.b}` < `${y.a} ${y.b}` ? -1 : 1;
          expect(nearlySameAmong(photos, wanted).toSorted(byPair)).toEqual(expected.toSorted(byPair));
        },
      ),
      { numRuns: 500 },
    ));

  it('goes into a database and back', () =>
    fc.assert(
      fc.property(hex, (hash) => {
        expect(bitsOfHash(hash)).toHaveLength(64);
        expect(hashOfBits(bitsOfHash(hash))).toBe(hash);
      }),
    ));

  it('is not said of blank walls and plain gradients', () => {
    expect(['0000000000000000', 'ffffffffffffffff', '0000000000000007'].map(tellsApart)).toEqual([
      false,
      false,
      false,
    ]);
    expect(tellsApart(HASH)).toBe(true);
  });
});

describe('a burst', () => {
  it('is what one camera took, each within ten seconds and ten bits of the one before', () =>
    expect(
      findBursts([
        photo('a', 0),
        photo('b', 10, { hash: flip(HASH, 10), sharpness: 300 }),
        photo('c', 20, { hash: HASH }),
        photo('late', 30.001),
        photo('other', 31, { hash: flip(HASH, 11) }),
      ]),
    ).toEqual([{ photos: ['a', 'b', 'c'], sharpest: 'b' }]));

  it('goes on over a photo that another camera takes in between', () =>
    expect(findBursts([photo('a', 0), photo('x', 1, { camera: 'Another' }), photo('b', 2)])).toEqual([
      { photos: ['a', 'b'], sharpest: 'a' },
    ]));

  it('ends with a photo that looks different', () =>
    expect(findBursts([photo('a', 0), photo('x', 1, { hash: flip(HASH, 30) }), photo('b', 2)])).toEqual([]));

  it('is none of blank pictures, of unknown cameras, or without a hash', () => {
    const none: Partial<BurstPhoto>[] = [{ hash: '0'.repeat(16) }, { camera: null }, { hash: null }];
    for (const more of none) expect(findBursts([photo('a', 0, more), photo('b', 1, more)])).toEqual([]);
  });

  it('does not depend on the order in which photos come, and has each once', () =>
    fc.assert(
      fc.property(
        fc
          .uniqueArray(fc.integer({ min: 0, max: 100 }), { maxLength: 12 })
          .chain((times) =>
            fc.tuple(
              fc.constant(times.map((at) => photo(`p${at}`, at))),
              fc.shuffledSubarray(times, { minLength: times.length }),
            ),
          ),
        ([photos, order]) => {
          const shuffled = order.map((at) => photo(`p${at}`, at));
          expect(findBursts(shuffled)).toEqual(findBursts(photos));
          const all = findBursts(photos).flatMap((burst) => burst.photos);
          expect(new Set(all).size).toBe(all.length);
        },
      ),
    ));

  it('proposes the original, not a reduced copy that came out crisper', () =>
    expect(
      findBursts([
        photo('copy', 0, { width: 480, height: 640, sharpness: 900 }),
        photo('original', 0, { width: 1536, height: 2048, sharpness: 500 }),
      ]),
    ).toEqual([{ photos: ['copy', 'original'], sharpest: 'original' }]));
});

describe('which of several is proposed', () => {
  const rated = (id: string, width: number, height: number, sharpness: number | null): RatedPhoto => ({
    id,
    width,
    height,
    sharpness,
  });

  it('is the first of equally sharp ones of one size, and one that is known', () => {
    expect(sharpestOf([rated('a', 4, 3, 7), rated('b', 4, 3, 7)])).toBe('a');
    expect(sharpestOf([rated('a', 4, 3, null), rated('b', 4, 3, 0)])).toBe('b');
  });

  it('is the larger of equally sharp ones, whatever way it was held', () =>
    expect(sharpestOf([rated('a', 3000, 3999, 7), rated('b', 4000, 3000, 7)])).toBe('b'));

  it('is a sharper one of half the pixels, but not of fewer', () => {
    expect(sharpestOf([rated('whole', 100, 100, 1), rated('half', 100, 50, 9)])).toBe('half');
    expect(sharpestOf([rated('whole', 100, 100, 1), rated('less', 100, 49, 9)])).toBe('whole');
  });

  it('is a large one whose sharpness is not known before a small one that is sharp', () =>
    expect(sharpestOf([rated('small', 480, 640, 900), rated('large', 1536, 2048, null)])).toBe('large'));

  const one = fc.record({
    width: fc.integer({ min: 1, max: 60 }),
    height: fc.integer({ min: 1, max: 60 }),
    sharpness: fc.option(fc.integer({ min: 0, max: 5 }), { nil: null }),
  });
  it('is never one of clearly fewer pixels, and of the rest none is sharper', () =>
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 8 }), (list) => {
        const photos = list.map((traits, i) => ({ id: `p${i}`, ...traits }));
        const most = Math.max(...photos.map(({ width, height }) => width * height));
        const isLarge = ({ width, height }: RatedPhoto) => width * height * 2 >= most;
        const proposed = photos.find(({ id }) => id === sharpestOf(photos)) as RatedPhoto;
        expect(isLarge(proposed)).toBe(true);
        for (const other of photos.filter(isLarge))
          expect(other.sharpness ?? -1).toBeLessThanOrEqual(proposed.sharpness ?? -1);
      }),
    ));
});
