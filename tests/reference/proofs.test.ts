import { describe, expect, it } from 'vitest';
import { EMPTY_FRONTIER, appendLeaf, leafHash, treeHead } from '#domain/ledger/merkle-tree';
import { isConsistent, isIncluded } from '#domain/verify/check-proof';
import { HashTree } from '#domain/verify/hash-tree';
import { fromHex, toHex } from '#domain/verify/hashing';
import { hashLeaf, hashPair } from '#domain/verify/merkle-hashes';
import { hashing } from '../../server/storage/hashing.ts';

/** Certificate Transparency reference leaves: transparency-dev/merkle, testonly/constants.go. */
const LEAVES = [
  '',
  '00',
  '10',
  '2021',
  '3031',
  '40414243',
  '5051525354555657',
  '606162636465666768696a6b6c6d6e6f',
].map(fromHex);

/** Roots of the first n of them, the same source; recomputed from the definition of RFC 6962 §2.1. */
const ROOTS = [
  'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
  '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
  'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
  'aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77',
  'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
  '4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4',
  '76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef',
  'ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c',
  '5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328',
];

/** Leaf hashes 0 to 7, the same source. */
const LEAF_HASHES = [
  '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
  '96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7',
  '0298d122906dcfc10892cb53a73992fc5b9f493ea4c9badb27b791b4127a7fe7',
  '07506a85fd9dd2f120eb694f86011e5bb4662e5c415a62917033d4a9624487e7',
  'bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b',
  '4271a26be0d8a84f0bd54c8c302e7cb3a3b5d1fa6780a40bcce2873477dab658',
  'b08693ec2e721597130641e8211e7eedccb4c26413963eee6c1e2ed16ffb1a5f',
  '46f6ffadd3d06a09ff3c5860d2755c8b9819db7df44251788c7d8e3180de8eb1',
] as const;
const PAIR_23 = '5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e';
const PAIR_45 = '0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a';
const PAIR_67 = 'ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0';
const FOUR_47 = '6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4';

/** transparency-dev/merkle, testdata/inclusion, happy-path.json; the leaf is counted from 0. */
const INCLUSIONS: [index: number, size: number, path: string[]][] = [
  [0, 8, [LEAF_HASHES[1], PAIR_23, FOUR_47]],
  [5, 8, [LEAF_HASHES[4], PAIR_67, ROOTS[4]!]],
  [2, 3, [ROOTS[2]!]],
  [1, 5, [LEAF_HASHES[0], PAIR_23, LEAF_HASHES[4]]],
];

/** transparency-dev/merkle, testdata/consistency, happy-path.json. */
const CONSISTENCIES: [first: number, second: number, proof: string[]][] = [
  [1, 8, [LEAF_HASHES[1], PAIR_23, FOUR_47]],
  [6, 8, [PAIR_45, PAIR_67, ROOTS[4]!]],
  [2, 5, [PAIR_23, LEAF_HASHES[4]]],
  [6, 7, [PAIR_45, LEAF_HASHES[6], ROOTS[4]!]],
];

const grow = (leaves: readonly Uint8Array[]) => {
  const tree = new HashTree(hashing);
  for (const leaf of leaves) tree.append(hashLeaf(hashing, leaf));
  return tree;
};
const published = grow(LEAVES);
const LARGEST = 130;
const long = grow(Array.from({ length: LARGEST }, (_, i) => Uint8Array.of(i, i >> 4)));
const text = (value: string) => new TextEncoder().encode(value);

describe('the tree of the verifier', () => {
  it('has the published leaves, nodes and roots', () => {
    LEAF_HASHES.forEach((leaf, i) => expect(toHex(published.leaf(i))).toBe(leaf));
    ROOTS.forEach((root, size) => expect(toHex(published.head(size))).toBe(root));
    // transparency-dev/merkle, rfc6962_test.go.
    expect(toHex(hashLeaf(hashing, text('L123456')))).toBe(
      '395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56',
    );
    expect(toHex(hashPair(hashing, text('N123'), text('N456')))).toBe(
      'aa217fe888e47007fa15edab33c2b492a722cb106c64667fc2b044444de66bbb',
    );
  });

  it('has the heads that the writer grows leaf by leaf, at every size to 130', () => {
    const sha256 = (bytes: Uint8Array) => hashing.digest(bytes);
    let frontier = EMPTY_FRONTIER;
    for (let size = 0; size < LARGEST; size += 1) {
      expect(toHex(long.head(size))).toBe(toHex(treeHead(sha256, frontier)));
      frontier = appendLeaf(sha256, frontier, leafHash(sha256, Uint8Array.of(size, size >> 4)));
    }
    expect(toHex(long.head())).toBe(toHex(treeHead(sha256, frontier)));
  });

  it('refuses sizes and entries that there are not', () => {
    for (const ask of [
      () => published.head(9),
      () => published.head(-1),
      () => published.head(1.5),
      () => published.leaf(8),
      () => published.inclusion(8),
      () => published.inclusion(-1),
      () => published.consistency(0, 8),
      () => published.consistency(5, 4),
      () => published.consistency(1, 9),
    ])
      expect(ask).toThrow(RangeError);
  });
});

describe('proofs of inclusion', () => {
  it.each(INCLUSIONS)('entry %i of %i is the published one', (index, size, path) => {
    expect(published.inclusion(index, size).map(toHex)).toEqual(path);
    const claim = { index, size, leaf: published.leaf(index), head: published.head(size) };
    expect(isIncluded(hashing, claim, path.map(fromHex))).toBe(true);
  });

  it('of every entry in every tree to 130 are accepted', () => {
    for (let size = 1; size <= LARGEST; size += 1)
      for (let index = 0; index < size; index += 1) {
        const claim = { index, size, leaf: long.leaf(index), head: long.head(size) };
        expect(isIncluded(hashing, claim, long.inclusion(index, size))).toBe(true);
      }
  });

  // The kinds of must-fail case of transparency-dev/merkle, proof/verify_test.go, and RFC 9162 §2.1.3.2.
  it('are refused with any one thing altered, at every size to 20', () => {
    for (let size = 1; size <= 20; size += 1)
      for (let index = 0; index < size; index += 1) {
        const path = long.inclusion(index, size);
        const claim = { index, size, leaf: long.leaf(index), head: long.head(size) };
        const other = hashing.digest(text('another'));
        const wrong: [object, Uint8Array[]][] = [
          [{ index: index - 1 }, path],
          [{ index: index + 1 }, path],
          [{ index: index + size }, path],
          [{ index: index + 0.5 }, path],
          [{ index: 2 ** 53 }, path],
          [{ size: 0 }, path],
          [{ size: -size }, path],
          [{ leaf: other }, path],
          [{ leaf: claim.head.slice(1) }, path],
          [{ head: other }, path],
          [{ head: hashing.digest(new Uint8Array()) }, path],
          [{}, [...path, other]],
          [{}, [...path, claim.head]],
          [{}, [other, ...path]],
          [{}, [...path, new Uint8Array()]],
          [{}, path.slice(0, -1)],
          [{}, path.slice(1)],
          ...path.map((_, i): [object, Uint8Array[]] => [{}, path.with(i, other)]),
          ...path.map((step, i): [object, Uint8Array[]] => [{}, path.with(i, step.slice(1))]),
        ];
        for (const [change, steps] of wrong) {
          // Only a tree of one entry has a path without steps, from which none can be taken away.
          if (path.length === 0 && Object.keys(change).length === 0 && steps.length === 0) continue;
          expect(isIncluded(hashing, { ...claim, ...change }, steps)).toBe(false);
        }
      }
  });

  // Under 7 the way from entry 5 to the head has the same turns: a size is vouched for by whoever vouches for a head.
  it('of another size are refused where the way to the head is another', () => {
    const claim = { index: 5, leaf: published.leaf(5), head: published.head(8) };
    for (const size of [6, 9, 16])
      expect(isIncluded(hashing, { ...claim, size }, published.inclusion(5, 8))).toBe(false);
  });
});

describe('proofs of consistency', () => {
  const sized = (tree: HashTree, size: number) => ({ size, head: tree.head(size) });

  it.each(CONSISTENCIES)('from %i to %i is the published one', (first, second, proof) => {
    expect(published.consistency(first, second).map(toHex)).toEqual(proof);
    const [old, now] = [sized(published, first), sized(published, second)];
    expect(isConsistent(hashing, old, now, proof.map(fromHex))).toBe(true);
  });

  it('between any two sizes to 130 are accepted', () => {
    for (let second = 1; second <= LARGEST; second += 1)
      for (let first = 1; first <= second; first += 1) {
        const proof = long.consistency(first, second);
        expect(isConsistent(hashing, sized(long, first), sized(long, second), proof)).toBe(true);
      }
  });

  // The kinds of must-fail case of transparency-dev/merkle, proof/verify_test.go, and RFC 9162 §2.1.4.2.
  it('are refused with any one thing altered, at every pair of sizes to 20', () => {
    const other = hashing.digest(text('another'));
    for (let second = 2; second <= 20; second += 1)
      for (let first = 1; first < second; first += 1) {
        const [old, now] = [sized(long, first), sized(long, second)];
        const proof = long.consistency(first, second);
        const wrong: [object, object, Uint8Array[]][] = [
          [{ size: 0 }, {}, proof],
          [{ size: -1 }, {}, proof],
          [{ size: first + 0.5 }, {}, proof],
          [{ size: second }, {}, proof],
          [{ size: second + 1 }, {}, proof],
          [{}, { size: first }, proof],
          [{}, { size: 0 }, proof],
          [{ head: other }, {}, proof],
          [{}, { head: other }, proof],
          [{ head: now.head }, { head: old.head }, proof],
          [{}, { head: hashing.digest(new Uint8Array()) }, proof],
          [{}, {}, []],
          [{}, {}, [...proof, other]],
          [{}, {}, [...proof, now.head]],
          [{}, {}, [other, ...proof]],
          [{}, {}, [old.head, ...proof]],
          [{}, {}, proof.slice(0, -1)],
          [{}, {}, proof.slice(1)],
          ...proof.map((_, i): [object, object, Uint8Array[]] => [{}, {}, proof.with(i, other)]),
        ];
        for (const [a, b, steps] of wrong)
          expect(isConsistent(hashing, { ...old, ...a }, { ...now, ...b }, steps)).toBe(false);
      }
  });

  it('of equal sizes need equal heads and no proof; of nothing there is none', () => {
    const [six, other] = [sized(published, 6), { size: 6, head: published.head(7) }];
    expect(isConsistent(hashing, six, six, [])).toBe(true);
    expect(isConsistent(hashing, six, other, [])).toBe(false);
    expect(isConsistent(hashing, six, six, [six.head])).toBe(false);
    expect(isConsistent(hashing, sized(published, 0), six, [])).toBe(false);
  });
});
